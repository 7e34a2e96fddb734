package org.coursewright.benchmarks.oracle;

import java.util.Optional;

import org.coursewright.bond.WallLayout;

/**
 * What a reference solver found for one wall.
 *
 * @param layout the best layout found, or empty if there was no time to find any
 * @param score its score, or empty without a layout
 * @param proven whether no layout of the wall scores less
 * @param bound no layout scores less than this
 * @param seconds processor time taken (s)
 */
public record ModelAnswer(Optional<WallLayout> layout, Optional<Score> score, boolean proven, Score bound,
        double seconds) {
}
