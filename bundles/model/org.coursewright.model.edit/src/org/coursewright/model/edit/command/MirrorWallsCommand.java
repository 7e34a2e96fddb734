package org.coursewright.model.edit.command;

import java.util.List;

/** Turns walls over, as in a mirror. */
public final class MirrorWallsCommand extends PlaceWallsCommand {

    /**
     * @param positions of at least one wall, those first that were chosen
     * @param chosen how many were chosen; the others only go along
     */
    public MirrorWallsCommand(List<WallPosition> positions, int chosen) {
        super(positions, chosen);
    }
}
