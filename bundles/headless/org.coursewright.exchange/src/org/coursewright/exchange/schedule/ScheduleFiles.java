package org.coursewright.exchange.schedule;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * The files a project is made of.
 *
 * @param walls schedule of walls
 * @param openings schedule of openings
 * @param units schedule of masonry units, or empty if walls are of built-in units only
 * @param estimate folder of tables that an estimate rests on, or empty for none
 */
public record ScheduleFiles(Path walls, Path openings, Optional<Path> units, Optional<Path> estimate) {

    public ScheduleFiles {
        Objects.requireNonNull(walls, "walls");
        Objects.requireNonNull(openings, "openings");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(estimate, "estimate");
    }

    /** A plan without an estimate. */
    public ScheduleFiles(Path walls, Path openings, Optional<Path> units) {
        this(walls, openings, units, Optional.empty());
    }
}
