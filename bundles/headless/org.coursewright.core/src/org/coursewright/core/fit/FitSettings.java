package org.coursewright.core.fit;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;

/**
 * What {@link ProjectFit} may propose.
 *
 * @param wall mark of the only wall whose dimensions may change, or empty for all walls
 * @param budget most that all changes together may come to, each counted as a distance; empty if it does not matter
 * @param wallTolerance how far the end of a wall may move that ends in the open and has no tolerance of its own in the
 *        project, zero or more
 * @param rate what a cut takes, or empty to go by the rates of the project
 */
public record FitSettings(Optional<String> wall, Optional<Length> budget, Length wallTolerance,
        Optional<CutRate> rate) {

    public FitSettings {
        Objects.requireNonNull(wall, "wall");
        Objects.requireNonNull(budget, "budget");
        Objects.requireNonNull(wallTolerance, "wallTolerance");
        Objects.requireNonNull(rate, "rate");
        if (wallTolerance.signum() < 0 || budget.filter(length -> length.signum() < 0).isPresent()) {
            throw new IllegalArgumentException("A budget and a tolerance are zero or more.");
        }
    }
}
