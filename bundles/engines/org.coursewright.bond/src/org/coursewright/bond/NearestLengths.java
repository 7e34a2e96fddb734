package org.coursewright.bond;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;

/**
 * The nearest lengths at which a run could be filled as wanted, looked for up to three whole units away.
 *
 * @param shorter the nearest one below the run's own length, empty if there is none
 * @param longer the nearest one above it, empty if there is none
 */
public record NearestLengths(Optional<Length> shorter, Optional<Length> longer) {

    public NearestLengths {
        Objects.requireNonNull(shorter, "shorter");
        Objects.requireNonNull(longer, "longer");
    }
}
