package org.coursewright.core.bond;

import java.util.List;
import java.util.stream.Collectors;

import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.RunBound;

/**
 * Names what the runs of a wall end at.
 *
 * @param wall mark of the wall
 * @param meetings of the building
 */
record BoundWords(String wall, List<Meeting> meetings) {

    String of(RunBound bound) {
        if (bound instanceof RunBound.Corner corner) {
            return (corner.through() ? "the outer face of the corner with %s" : "the side of %s at the corner")
                    .formatted(others(corner.meeting()));
        } else if (bound instanceof RunBound.Bonded bonded) {
            return (bonded.through() ? "the far face of %s" : "the side of %s").formatted(others(bonded.meeting()));
        } else if (bound instanceof RunBound.Interrupted interrupted) {
            return of(interrupted.obstacle());
        } else if (bound instanceof RunBound.Raked) {
            return "the slope of the gable";
        }
        return bound instanceof RunBound.Tied ? "the wall it is tied to" : "the free end";
    }

    private static String of(Obstacle obstacle) {
        return switch (obstacle.kind()) {
            case OPENING -> "opening ";
            case LINTEL -> "the lintel over ";
            case BEAM -> "bond beam ";
            case TEE -> "wall ";
        } + obstacle.mark();
    }

    /** The other walls of a meeting. */
    String others(String meeting) {
        String others = meetings.stream().filter(each -> each.id().equals(meeting))
                .flatMap(each -> each.walls().stream()).filter(mark -> !mark.equals(wall)).distinct()
                .collect(Collectors.joining(" and "));
        return others.isEmpty() ? "another wall" : others;
    }
}
