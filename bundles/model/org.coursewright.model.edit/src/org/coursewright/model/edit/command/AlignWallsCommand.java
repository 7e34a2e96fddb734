package org.coursewright.model.edit.command;

import java.util.List;

/** Brings walls into line with another one; walls that end at them go along. */
public final class AlignWallsCommand extends PlaceWallsCommand {

    /**
     * @param positions of at least one wall, those first that were chosen
     * @param chosen how many were chosen; the others only go along
     */
    public AlignWallsCommand(List<WallPosition> positions, int chosen) {
        super(positions, chosen);
    }
}
