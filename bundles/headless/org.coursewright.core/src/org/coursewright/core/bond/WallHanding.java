package org.coursewright.core.bond;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Meeting;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.model.building.Building;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Junction;
import org.coursewright.model.building.JunctionEnd;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallPlace;
import org.coursewright.model.edit.command.ChooseHandingCommand;

/**
 * Which wall runs through in odd courses where a wall's end takes turns with another.
 *
 * @param outcome of laying the building
 * @param meeting where they meet
 */
public record WallHanding(LayoutOutcome outcome, Meeting meeting) {

    /**
     * @param outcome of laying the building
     * @param mark of a wall
     * @param place start or end of the wall
     * @return the handing there, empty where the wall takes turns with none
     */
    public static Optional<WallHanding> at(LayoutOutcome outcome, String mark, WallPlace place) {
        return face(outcome, mark).flatMap(face -> meetingOf(place == WallPlace.START ? face.start() : face.end()))
                .flatMap(id -> outcome.meetings().stream().filter(each -> each.id().equals(id)).findFirst())
                .map(meeting -> new WallHanding(outcome, meeting));
    }

    private static Optional<WallFace> face(LayoutOutcome outcome, String mark) {
        return outcome.faces().stream().filter(each -> each.mark().equals(mark)).findFirst();
    }

    private static Optional<String> meetingOf(WallEnd end) {
        if (end instanceof WallEnd.Corner corner) {
            return Optional.of(corner.meeting());
        }
        return end instanceof WallEnd.Bonded bonded ? Optional.of(bonded.meeting()) : Optional.empty();
    }

    /** @return marks of the two walls that take turns */
    public List<String> rivals() {
        return meeting.walls().subList(0, Math.min(2, meeting.walls().size()));
    }

    /** @return mark of the wall that runs through in odd courses */
    public String throughOnOdd() {
        return outcome.result().throughOnOdd().getOrDefault(meeting.id(), rivals().get(0));
    }

    /** @return whether somebody has decided so, else the layout has */
    public boolean isPinned() {
        return meeting.throughOnOdd().isPresent();
    }

    /**
     * @param building that was laid
     * @param through mark of one of the rivals, or empty to let the layout choose
     * @return the edit that decides so
     */
    public ChooseHandingCommand choose(Building building, Optional<String> through) {
        List<Wall> walls = rivals().stream().flatMap(mark -> wall(building, mark).stream()).toList();
        Junction junction = building.getJunctions().stream()
                .filter(each -> each.getEnds().stream().map(JunctionEnd::getWall).toList().containsAll(walls))
                .findFirst().orElseGet(() -> junction(walls));
        return new ChooseHandingCommand(building, junction, through.flatMap(mark -> wall(building, mark)));
    }

    private static Optional<Wall> wall(Building building, String mark) {
        return building.getStoreys().stream().flatMap(storey -> storey.getWalls().stream())
                .filter(wall -> mark.equals(wall.getMark())).findFirst();
    }

    private Junction junction(List<Wall> walls) {
        Junction junction = BuildingFactory.eINSTANCE.createJunction();
        walls.forEach(wall -> {
            JunctionEnd end = BuildingFactory.eINSTANCE.createJunctionEnd();
            end.setWall(wall);
            end.setPlace(place(wall));
            junction.getEnds().add(end);
        });
        return junction;
    }

    private WallPlace place(Wall wall) {
        Optional<WallFace> face = face(outcome, wall.getMark());
        if (face.flatMap(each -> meetingOf(each.start())).filter(meeting.id()::equals).isPresent()) {
            return WallPlace.START;
        }
        return face.flatMap(each -> meetingOf(each.end())).filter(meeting.id()::equals).isPresent()
                ? WallPlace.END
                : WallPlace.ALONG;
    }
}
