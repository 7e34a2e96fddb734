package org.coursewright.cli.layout;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.coursewright.bond.BondResult;
import org.coursewright.bond.CutReason;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.cli.BadInputException;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.core.finding.Finding;

/**
 * What {@code lay} shows.
 *
 * @param project name of the project
 * @param walls each with what was asked for it
 * @param building how the whole building is handed, whatever walls are shown
 * @param meetings where walls of the building meet
 * @param findings of the whole building
 */
record LayResult(String project, List<LaidWall> walls, BondResult building, List<Meeting> meetings,
        List<Finding> findings) {

    /**
     * A wall.
     *
     * @param face as it was asked
     * @param layout as it is laid
     * @param cutReasons why its pieces are cut, for every run that has cuts
     */
    record LaidWall(WallFace face, WallLayout layout, List<CutReason> cutReasons) {

        UnitCount count() {
            return UnitCount.of(java.util.stream.Stream.of(layout));
        }
    }

    static LayResult of(String project, LayoutOutcome outcome) {
        List<WallLayout> layouts = outcome.result().walls();
        List<WallFace> faces = outcome.faces();
        return new LayResult(project, IntStream.range(0, layouts.size())
                .mapToObj(i -> new LaidWall(faces.get(i), layouts.get(i), outcome.cutReasons(i))).toList(),
                outcome.result(), outcome.meetings(), outcome.findings());
    }

    /** @return the same for one wall */
    LayResult only(String mark) throws BadInputException {
        List<LaidWall> found = walls.stream().filter(wall -> wall.face().mark().equalsIgnoreCase(mark.strip()))
                .toList();
        if (found.isEmpty()) {
            throw new BadInputException("--wall: There is no wall \"%s\". Walls are %s.".formatted(mark,
                    walls.stream().map(wall -> wall.face().mark()).limit(50).collect(Collectors.joining(", "))));
        }
        return new LayResult(project, found, building, meetings, findings);
    }

    UnitCount totals() {
        return UnitCount.of(walls.stream().map(LaidWall::layout));
    }
}
