package org.coursewright.exchange.sheet.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

import org.coursewright.measure.DisplayUnit;

/**
 * Standard drawing scales: those of ISO 5455 with 1:25, or those of the architect's scale in inches to the foot.
 */
final class Scales {

    private static final List<Integer> METRIC = List.of(10, 20, 25, 50, 100, 200, 500, 1000);
    private static final List<Integer> INCHES = List.of(12, 16, 24, 32, 48, 64, 96, 128, 192, 384, 768);
    private static final Map<Integer, String> INCH_TO_FOOT = Map.of(12, "1 in", 16, "3/4 in", 24, "1/2 in", 32,
            "3/8 in", 48, "1/4 in", 64, "3/16 in", 96, "1/8 in", 128, "3/32 in", 192, "1/16 in");

    private Scales() {
    }

    /** @return the wanted scale if it fits, else the next standard scale that does, else the next doubling that does */
    static int first(Optional<Integer> wanted, DisplayUnit unit, IntPredicate fits) {
        List<Integer> standard = unit == DisplayUnit.INCH ? INCHES : METRIC;
        int least = wanted.orElse(standard.get(0));
        int last = standard.get(standard.size() - 1);
        IntStream beyond = IntStream.iterate(Math.max(last, least), scale -> scale <= Integer.MAX_VALUE / 4,
                scale -> scale * 2);
        return IntStream
                .concat(IntStream.concat(IntStream.of(least),
                        standard.stream().mapToInt(Integer::intValue).filter(scale -> scale > least)), beyond)
                .filter(fits).findFirst().orElse(least);
    }

    /** @return such as {@code 1:48 (1/4 in to the foot)} */
    static String describe(int scale, DisplayUnit unit) {
        String ratio = "1:" + scale;
        return unit == DisplayUnit.INCH && INCH_TO_FOOT.containsKey(scale)
                ? "%s (%s to the foot)".formatted(ratio, INCH_TO_FOOT.get(scale))
                : ratio;
    }
}
