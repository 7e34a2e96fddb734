package org.coursewright.core.geometry;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.measure.Length;

/**
 * The walls of one storey and where they meet. Immutable; the same walls in the same order give the same network.
 *
 * <p>Ends that coincide to 0.1 mm meet, and an end meets a wall on whose centre line it lies to 0.1 mm, because
 * coordinates of slanted walls are rounded. Walls that cannot be walls are left out and told of.
 */
public final class WallNetwork {

    /**
     * How far from another wall's faces a free end counts as a near miss unless somebody says otherwise: 100 mm, about 4
     * in, less than the shortest piece of a wall one would lay on purpose (common practice, no source).
     */
    public static final Length DEFAULT_TOLERANCE = Length.ofMillimetres(100);

    private final List<LeftOut> leftOut;
    private final List<WallMeeting> meetings;
    private final List<NearMiss> nearMisses;
    private final List<Crossing> crossings;
    private final Map<String, WallFaces> faces = new HashMap<>();

    private WallNetwork(Intake intake, long tolerance) {
        List<Line> lines = intake.lines();
        long widest = lines.stream().mapToLong(Line::thickness).max().orElse(0);
        Neighbours neighbours = new Neighbours(lines, tolerance + widest + Line.JOINED);
        Nodes nodes = new NodeFinder(lines, neighbours).find();
        List<NodeShape> shapes = nodes.inOrder().stream().map(NodeShape::new).toList();
        EndFaces endFaces = new EndFaces(shapes);
        this.leftOut = intake.leftOut();
        this.meetings = shapes.stream().map(NodeShape::meeting).toList();
        List<Crossing> found = new CrossingFinder(neighbours, nodes).find(lines);
        this.nearMisses = new NearMissFinder(neighbours, nodes, tolerance).find().stream()
                .filter(miss -> found.stream().noneMatch(crossing -> explains(crossing, miss))).toList();
        this.crossings = found.stream().filter(this::isMeant).toList();
        lines.forEach(line -> faces.put(line.mark(), endFaces.faces(line)));
    }

    /**
     * Finds out where walls meet.
     *
     * @param walls the centre lines of the walls of one storey, in any order
     * @param tolerance how far from another wall's faces a free end counts as a near miss, at least zero and at most 10 m
     * @return the network
     * @throws IllegalArgumentException if the tolerance is out of range; walls that cannot be walls are no reason
     */
    public static WallNetwork of(List<CentreLine> walls, Length tolerance) {
        if (tolerance.signum() < 0 || tolerance.isGreaterThan(Intake.THICKEST)) {
            throw new IllegalArgumentException("The tolerance (%s) must be from 0 to 10 m.".formatted(tolerance));
        }
        return new WallNetwork(Intake.of(walls), tolerance.units());
    }

    /**
     * Finds out where walls meet, with the {@link #DEFAULT_TOLERANCE}.
     *
     * @param walls the centre lines of the walls of one storey, in any order
     * @return the network
     */
    public static WallNetwork of(List<CentreLine> walls) {
        return of(walls, DEFAULT_TOLERANCE);
    }

    /** Walls that lie side by side in each other are not to be joined: their ends miss each other for another reason. */
    private static boolean explains(Crossing crossing, NearMiss miss) {
        return crossing.kind() == Crossing.Kind.SIDE_BY_SIDE && miss.isBetween(crossing.first(), crossing.second());
    }

    /** An end that goes a little too far crosses too; the near miss says what to do about it. */
    private boolean isMeant(Crossing crossing) {
        return nearMisses.stream().noneMatch(miss -> miss.isBetween(crossing.first(), crossing.second()));
    }

    /** @return the walls that cannot be walls, in their order; nothing else here knows them */
    public List<LeftOut> leftOut() {
        return leftOut;
    }

    /** @return every point where a wall ends, in the order of the walls; each end of each wall is in exactly one */
    public List<WallMeeting> meetings() {
        return meetings;
    }

    /**
     * The meeting at an end of a wall.
     *
     * @param mark the wall's mark
     * @param end {@link Place#START} or {@link Place#END}
     * @return the meeting, free or not
     * @throws IllegalArgumentException if there is no such wall or {@code end} is no end
     */
    public WallMeeting meetingAt(String mark, Place end) {
        faces(mark);
        return meetings.stream().filter(meeting -> end != Place.ALONG && meeting.involves(mark, end)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "A wall may have several meetings along it; ask for those of wall %s.".formatted(mark)));
    }

    /**
     * The meetings at which other walls end against the side of a wall.
     *
     * @param mark the wall's mark
     * @return them from its start to its end
     * @throws IllegalArgumentException if there is no such wall
     */
    public List<WallMeeting> meetingsAlong(String mark) {
        faces(mark);
        return meetings.stream().filter(meeting -> meeting.involves(mark, Place.ALONG))
                .sorted((a, b) -> a.along(mark).compareTo(b.along(mark))).toList();
    }

    /** @return the free ends that were probably meant to meet another wall, in the order of the walls */
    public List<NearMiss> nearMisses() {
        return nearMisses;
    }

    /** @return the pairs of walls that run through each other, in the order of the walls */
    public List<Crossing> crossings() {
        return crossings;
    }

    /**
     * How long a wall is.
     *
     * @param mark the wall's mark
     * @return its lengths
     * @throws IllegalArgumentException if there is no such wall or it was left out
     */
    public WallFaces faces(String mark) {
        WallFaces found = faces.get(mark);
        if (found == null) {
            throw new IllegalArgumentException("There is no wall %s in the network.".formatted(mark));
        }
        return found;
    }
}
