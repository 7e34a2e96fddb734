package org.coursewright.model.edit.command;

import java.util.ArrayList;
import java.util.List;

/** An edit that brings walls to other places in plan, with their openings. */
abstract class PlaceWallsCommand extends CombinedCommand {

    /**
     * @param positions of at least one wall
     * @param named how many of them, from the first on, the label names; the others only go along
     */
    PlaceWallsCommand(List<WallPosition> positions, int named) {
        super(positions.get(0).wall(), parts(positions),
                positions.stream().limit(named).map(WallPosition::wall).toList());
    }

    private static List<ProjectCommand> parts(List<WallPosition> positions) {
        List<ProjectCommand> parts = new ArrayList<>();
        for (WallPosition each : positions) {
            parts.add(new ChangeCentreLineCommand(each.wall(), each.fromX(), each.fromY(), each.toX(), each.toY()));
            parts.add(new FitTopCommand(each.wall(), each.longer()));
            if (each.openingsBy().signum() != 0) {
                each.wall().getOpenings().forEach(opening -> parts.add(
                        new MoveOpeningCommand(opening, opening.getOffset().plus(each.openingsBy()))));
            }
        }
        return parts;
    }
}
