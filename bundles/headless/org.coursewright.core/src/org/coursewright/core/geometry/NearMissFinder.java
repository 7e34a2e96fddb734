package org.coursewright.core.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.measure.Length;

/** Finds free ends that stop within a tolerance of another wall's faces. */
final class NearMissFinder {

    private final Neighbours neighbours;
    private final Nodes nodes;
    private final long tolerance;

    NearMissFinder(Neighbours neighbours, Nodes nodes, long tolerance) {
        this.neighbours = neighbours;
        this.nodes = nodes;
        this.tolerance = tolerance;
    }

    /** @return the nearest miss of each free end, in the order of the ends; two ends that miss each other once */
    List<NearMiss> find() {
        List<NearMiss> misses = new ArrayList<>();
        nodes.inOrder().stream().filter(NearMissFinder::isFree).map(this::nearest).flatMap(Optional::stream)
                .filter(miss -> misses.stream().noneMatch(known -> mirrors(known, miss))).forEach(misses::add);
        return misses;
    }

    private static boolean isFree(Node node) {
        return node.ends().size() == 1 && node.passing().isEmpty();
    }

    private static boolean mirrors(NearMiss known, NearMiss miss) {
        return known.end().equals(miss.other()) && known.other().equals(miss.end());
    }

    private Optional<NearMiss> nearest(Node node) {
        Arm end = node.ends().get(0);
        return neighbours.of(end.line()).stream().filter(other -> !startsFrom(end, other))
                .flatMap(other -> miss(end, other).stream()).min(Comparator.comparing(NearMiss::distance));
    }

    /** A short wall is meant to be as near as that to the wall that its other end meets. */
    private boolean startsFrom(Arm end, Line other) {
        return nodes.at(end.line(), end.place() == Place.START ? Place.END : Place.START).touches(other);
    }

    private Optional<NearMiss> miss(Arm end, Line other) {
        long reach = tolerance + Nearest.half(other.thickness());
        Optional<NearMiss> ofEnd = Stream.of(Place.START, Place.END)
                .filter(place -> end.at().isWithin(reach, other.end(place)))
                .map(place -> miss(end, other.at(place), other.end(place)))
                .min(Comparator.comparing(NearMiss::distance));
        if (ofEnd.isPresent() || !other.isBeside(end.at()) || !other.isWithin(reach, end.at())) {
            return ofEnd;
        }
        return Optional.of(miss(end, other.along(end.at()), other.foot(end.at())));
    }

    private static NearMiss miss(Arm end, MeetingEnd other, Point join) {
        return new NearMiss(end.line().at(end.place()), other, Length.ofUnits(end.at().to(join).length()),
                Length.ofUnits(join.x()), Length.ofUnits(join.y()));
    }
}
