package org.coursewright.bond.internal.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import java.util.function.Supplier;

import org.coursewright.bond.internal.choice.ExclusionNetwork;
import org.coursewright.bond.internal.choice.Exclusions;

/** What is known to exclude one another of more than two runs; kept once for all runs that lie alike. */
final class StarExclusions {

    /** To know of more that exclude one another is not worth its time. */
    private static final int MOST_EXCLUDED = 50_000;

    /** Some runs, and others that lie alike. */
    static final class Star {
        private final List<int[]> scopes;
        private Exclusions exclusions;
        private int ahead = 1;

        Star(List<int[]> scopes, Exclusions exclusions) {
            this.scopes = scopes;
            this.exclusions = exclusions;
        }

        Exclusions exclusions() {
            return exclusions;
        }

        /** @return whether any was not known and there is room for them */
        boolean add(long... indexes) {
            Exclusions more = exclusions.with(indexes);
            boolean grows = more.count() > exclusions.count() && more.count() <= MOST_EXCLUDED;
            exclusions = grows ? more : exclusions;
            return grows;
        }

        /** How far to look beyond what was asked: twice as far each time, for that will be asked next. */
        int ahead() {
            ahead = Math.min(2 * ahead, 1 << 10);
            return ahead;
        }
    }

    private record Scoped(int[] scope, Star star) {
    }

    private final Map<List<Object>, Star> stars = new LinkedHashMap<>();
    private final Map<Integer, List<Scoped>> byRun = new HashMap<>();

    private void note(Star star) {
        for (int[] scope : star.scopes) {
            for (int run : scope) {
                byRun.computeIfAbsent(run, unknown -> new ArrayList<>()).add(new Scoped(scope, star));
            }
        }
    }

    /** @param choices by run, how many choices it has */
    Star star(List<Object> key, Supplier<List<int[]>> scopes, IntUnaryOperator choices) {
        return stars.computeIfAbsent(key, unknown -> {
            List<int[]> found = scopes.get();
            Star star = new Star(found, Exclusions.none(Arrays.stream(found.get(0)).map(choices).toArray()));
            note(star);
            return star;
        });
    }

    /** Whether choices are known to exclude one another, that of one run among them. */
    boolean isKnown(int run, int[] chosen) {
        for (Scoped each : byRun.getOrDefault(run, List.of())) {
            if (each.star().exclusions.holds(each.scope(), chosen)) {
                return true;
            }
        }
        return false;
    }

    void addTo(ExclusionNetwork network) {
        for (Star star : stars.values()) {
            star.scopes.forEach(scope -> network.add(scope, star.exclusions));
        }
    }

    /** Tells the choices of some runs apart further; where too many exclude one another they are forgotten. */
    void split(IntPredicate runs, int[] parts) {
        stars.values().removeIf(star -> {
            int[] scope = star.scopes.get(0);
            for (int place = 0; place < scope.length && star.exclusions.count() <= MOST_EXCLUDED; place++) {
                if (runs.test(scope[place])) {
                    star.exclusions = star.exclusions.split(place, parts);
                }
            }
            return star.exclusions.count() > MOST_EXCLUDED;
        });
        byRun.clear();
        stars.values().forEach(this::note);
    }
}
