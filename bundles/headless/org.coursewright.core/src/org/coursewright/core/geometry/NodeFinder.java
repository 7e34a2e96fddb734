package org.coursewright.core.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Finds the points where walls end, by joining ends that coincide to 0.1 mm. */
final class NodeFinder {

    private static final List<Place> ENDS = List.of(Place.START, Place.END);

    private final List<Line> lines;
    private final Neighbours neighbours;
    private final Set<Arm> seen = new HashSet<>();

    NodeFinder(List<Line> lines, Neighbours neighbours) {
        this.lines = lines;
        this.neighbours = neighbours;
    }

    /** @return the nodes in the order of their first ends; each end of each line is in exactly one */
    Nodes find() {
        List<Node> nodes = new ArrayList<>();
        for (Line line : lines) {
            for (Place place : ENDS) {
                Arm end = Arm.of(line, place);
                if (seen.add(end)) {
                    List<Arm> ends = joinedTo(end);
                    nodes.add(new Node(line.end(place), ends, passing(ends)));
                }
            }
        }
        return new Nodes(nodes);
    }

    /** Ends joined to ends that are joined are joined too, so the search goes on from each one found. */
    private List<Arm> joinedTo(Arm first) {
        List<Arm> joined = new ArrayList<>(List.of(first));
        for (int i = 0; i < joined.size(); i++) {
            Arm arm = joined.get(i);
            neighbours.of(arm.line()).forEach(other -> ENDS.stream().map(place -> Arm.of(other, place))
                    .filter(end -> arm.at().isWithin(Line.JOINED, end.at()) && seen.add(end)).forEach(joined::add));
        }
        joined.sort(Comparator.comparingInt(arm -> arm.line().order()));
        return joined;
    }

    private List<Arm> passing(List<Arm> ends) {
        Set<Line> candidates = new TreeSet<>(Comparator.comparingInt(Line::order));
        ends.forEach(end -> candidates.addAll(neighbours.of(end.line())));
        ends.forEach(end -> candidates.remove(end.line()));
        return candidates.stream().filter(line -> ends.stream().anyMatch(end -> line.carries(end.at())))
                .map(line -> Arm.of(line, Place.ALONG)).toList();
    }
}
