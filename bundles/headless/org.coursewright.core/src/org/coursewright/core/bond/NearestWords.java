package org.coursewright.core.bond;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.bond.NearestLengths;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;

/**
 * Names the lengths next to a run's own that would do. What is shown is rounded away from the run's length, so that it
 * still does.
 */
record NearestWords(LengthFormat format) {

    /** @return {@code 27"}, {@code 27" or 28 1/2"}, or empty if there are none near */
    Optional<String> of(NearestLengths nearest) {
        String text = Stream.of(nearest.shorter().map(this::down), nearest.longer().map(this::up))
                .flatMap(Optional::stream).map(format::format).distinct().collect(Collectors.joining(" or "));
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    private Length down(Length length) {
        long step = step().units();
        return Length.ofUnits(Math.floorDiv(length.units(), step) * step);
    }

    private Length up(Length length) {
        long step = step().units();
        return Length.ofUnits(-Math.floorDiv(-length.units(), step) * step);
    }

    /** The finest length that is shown. */
    private Length step() {
        return switch (format.unit()) {
            case INCH -> Length.ofInchFraction(1, format.inchDenominator());
            case MILLIMETRE -> Length.ofUnits(Length.UNITS_PER_MILLIMETRE / 10);
        };
    }
}
