package org.coursewright.core.cost;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.allied.BarRun;

/**
 * A beam along walls, copied out of the project.
 *
 * @param mark its mark
 * @param element ASTM E1557 code it belongs to
 * @param sealed whether its top and sides are sealed
 * @param length along the centre lines of its walls
 * @param width across
 * @param height from top to bottom
 * @param mix concrete, if chosen
 * @param bars one line of steel, if it has any
 * @param lines how many such lines
 */
record BeamBrief(String mark, String element, boolean sealed, Length length, Length width, Length height,
        Optional<MixBrief> mix, Optional<BarRun> bars, int lines) {

    BeamBrief {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(element, "element");
        Objects.requireNonNull(mix, "mix");
        Objects.requireNonNull(bars, "bars");
    }
}
