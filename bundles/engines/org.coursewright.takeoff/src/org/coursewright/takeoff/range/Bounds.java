package org.coursewright.takeoff.range;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

/** Checks of three-point estimates. */
final class Bounds {

    private Bounds() {
    }

    static void requireRising(double low, double mode, double high) {
        require(Double.isFinite(low) && Double.isFinite(high) && low <= mode && mode <= high,
                "The estimate %s – %s – %s does not rise from low by likely to high: sort it.", low, mode, high);
    }
}
