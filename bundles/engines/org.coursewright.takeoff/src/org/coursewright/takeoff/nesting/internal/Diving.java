package org.coursewright.takeoff.nesting.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.coursewright.measure.Progress;

/**
 * Looks for a plan that meets the bound: settles the patterns that the relaxation uses most, solves the relaxation of what is
 * left, and so on; turns back where too many units would be needed. Finds most plans, proves nothing.
 */
final class Diving {

    private static final int CHOICES = 3;

    private final Sizes sizes;
    private final long target;
    private final Progress progress;
    private long relaxations;

    /** @param relaxations how many may be solved */
    Diving(Sizes sizes, long target, long relaxations, Progress progress) {
        this.sizes = sizes;
        this.target = target;
        this.relaxations = relaxations;
        this.progress = progress;
    }

    /** @return a plan of at most the target, if one was found */
    Optional<Cutting> dive(long[] demand) {
        return dive(demand, new Cutting());
    }

    private Optional<Cutting> dive(long[] left, Cutting used) {
        if (IntStream.range(0, left.length).allMatch(item -> left[item] == 0)) {
            return Optional.of(used);
        }
        if (relaxations-- <= 0) {
            return Optional.empty();
        }
        Relaxation relaxation = new ColumnGeneration(sizes, left).solve(progress);
        if (used.total() + relaxation.bound(left).ceiling() > target) {
            return Optional.empty();
        }
        long[] rest = left.clone();
        Cutting floor = new Filling(sizes).roundedDown(relaxation, rest);
        return floor.total() > 0 ? dive(rest, used.plus(floor)) : tryMostUsed(relaxation, left, used);
    }

    private Optional<Cutting> tryMostUsed(Relaxation relaxation, long[] left, Cutting used) {
        List<Integer> mostUsed = IntStream.range(0, relaxation.patterns().size()).boxed().sorted(Comparator
                .comparingDouble(relaxation::uses).reversed()).limit(CHOICES).toList();
        for (int index : mostUsed) {
            int[] pattern = relaxation.patterns().get(index);
            long[] rest = left.clone();
            if (relaxation.uses(index) > 0 && take(pattern, rest)) {
                Cutting one = new Cutting();
                one.add(pattern, 1);
                Optional<Cutting> found = dive(rest, used.plus(one));
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static boolean take(int[] pattern, long[] left) {
        boolean fits = true;
        for (int item = 0; item < left.length; item++) {
            left[item] -= pattern[item];
            fits &= left[item] >= 0;
        }
        return fits;
    }
}
