package org.coursewright.takeoff.nesting.internal;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** Patterns with how many units are cut by each; grows while a plan is made. */
final class Cutting {

    /** An array of counts that can be looked up by what it holds. */
    private record Pattern(int[] pieces) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Pattern pattern && Arrays.equals(pieces, pattern.pieces);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(pieces);
        }
    }

    @FunctionalInterface
    interface Visitor {
        void pattern(int[] pieces, long units);
    }

    private final Map<Pattern, Long> units = new HashMap<>();
    private long total;

    void add(int[] pieces, long count) {
        if (count > 0) {
            units.merge(new Pattern(pieces.clone()), count, Long::sum);
            total += count;
        }
    }

    Cutting plus(Cutting other) {
        Cutting sum = new Cutting();
        forEach(sum::add);
        other.forEach(sum::add);
        return sum;
    }

    long total() {
        return total;
    }

    void forEach(Visitor visitor) {
        units.forEach((pattern, count) -> visitor.pattern(pattern.pieces, count));
    }
}
