package org.coursewright.layout.ui.face;

import java.util.Optional;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.WallHanding;
import org.coursewright.model.building.WallPlace;

/**
 * Which walls run through at the ends of a wall.
 *
 * @param start empty where the wall takes turns with none
 * @param end empty where the wall takes turns with none
 */
public record Corners(Optional<WallHanding> start, Optional<WallHanding> end) {

    static Corners of(LayoutOutcome outcome, String mark) {
        return new Corners(WallHanding.at(outcome, mark, WallPlace.START),
                WallHanding.at(outcome, mark, WallPlace.END));
    }
}
