package org.coursewright.layout.ui.plan.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import org.coursewright.core.geometry.WallMeeting;
import org.coursewright.core.geometry.WallNetwork;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;

/**
 * The walls of a storey as they lie in plan. Walls without a length are left out.
 *
 * @param walls by what they show, in the order of the storey
 * @param meetings where they meet, and where they end in the open
 */
public record StoreyShape(Map<Wall, WallShape> walls, List<PlanMeeting> meetings) {

    /** A storey without walls. */
    public static final StoreyShape EMPTY = new StoreyShape(Map.of(), List.of());

    public StoreyShape {
        walls = Collections.unmodifiableMap(new LinkedHashMap<>(walls));
        meetings = List.copyOf(meetings);
    }

    /**
     * @param storey of a project
     * @param project that it belongs to
     * @return how its walls lie now
     */
    public static StoreyShape of(Storey storey, Project project) {
        List<WallDraft> drafts = storey.getWalls().stream().filter(StoreyShape::hasLength)
                .map(wall -> new WallDraft(wall, WallModule.of(wall, project))).toList();
        WallNetwork network = WallNetwork.of(IntStream.range(0, drafts.size())
                .mapToObj(i -> drafts.get(i).centreLine(Integer.toString(i))).toList());
        List<PlanMeeting> meetings = new ArrayList<>();
        network.meetings().forEach(meeting -> meetings.add(cut(meeting, drafts)));
        List<Integer> out = network.leftOut().stream().map(each -> Integer.valueOf(each.mark())).toList();
        Map<Wall, WallShape> shapes = new LinkedHashMap<>();
        IntStream.range(0, drafts.size()).filter(i -> !out.contains(i)).forEach(i -> shapes.put(drafts.get(i).wall(),
                drafts.get(i).shape(network.faces(Integer.toString(i)))));
        return new StoreyShape(shapes, meetings);
    }

    private static boolean hasLength(Wall wall) {
        return !wall.getFromX().equals(wall.getToX()) || !wall.getFromY().equals(wall.getToY());
    }

    private static PlanMeeting cut(WallMeeting meeting, List<WallDraft> drafts) {
        PlanPoint at = new PlanPoint(meeting.x(), meeting.y());
        List<MeetingCuts.End> ends = meeting.ends().stream()
                .map(end -> new MeetingCuts.End(drafts.get(Integer.parseInt(end.mark())), end.place())).toList();
        new MeetingCuts(at, ends).apply(meeting.kind());
        return new PlanMeeting(meeting.kind(), at,
                ends.stream().map(end -> new PlanMeeting.End(end.wall().wall(), end.place())).toList());
    }

    /**
     * @param wall any
     * @return how it lies, empty if it is not of this storey or has no length
     */
    public Optional<WallShape> wall(Wall wall) {
        return Optional.ofNullable(walls.get(wall));
    }

    /** @return the box around all walls, empty if there are none */
    public Optional<PlanBounds> bounds() {
        return PlanBounds.of(walls.values().stream().flatMap(wall -> wall.outline().stream()).toList());
    }
}
