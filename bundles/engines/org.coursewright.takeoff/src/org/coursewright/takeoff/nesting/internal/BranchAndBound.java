package org.coursewright.takeoff.nesting.internal;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.measure.Progress;

/**
 * Looks for a cutting with fewer units than one known, unit by unit: the largest piece left goes into the next unit, with
 * every choice of others that leaves no room for a further piece. Some best plan is among these, since a piece that still
 * fits can be moved there. A branch ends where the relaxation's bound shows that it needs too many units, or where the same
 * pieces were left before with no more units used.
 */
final class BranchAndBound {

    /** Deeper searches would run out of stack; larger plans are proven by the relaxation or not at all. */
    private static final long DEEPEST = 1000;

    private final Sizes sizes;
    private final Relaxation relaxation;
    private final Progress progress;
    private final Map<List<Long>, Long> seen = new HashMap<>();
    private final Deque<int[]> chosen = new ArrayDeque<>();
    /** Most worth by size of the pieces from each on, rounded up a little; the last, of no pieces, is zero. */
    private final double[] densest;
    private long nodes;
    private long fewest;
    private Optional<Cutting> found = Optional.empty();

    /** @param limit nodes after which the search gives up */
    BranchAndBound(Sizes sizes, Relaxation relaxation, long limit, Progress progress) {
        this.sizes = sizes;
        this.relaxation = relaxation;
        this.progress = progress;
        nodes = limit;
        densest = new double[sizes.count() + 1];
        for (int item = sizes.count() - 1; item >= 0; item--) {
            double density = (double) relaxation.valueOfOne(item) / sizes.size(item);
            densest[item] = Math.max(densest[item + 1], density * (1 + 1e-9));
        }
    }

    /**
     * @param demand pieces to cut
     * @param known units of a plan that is known
     * @param target units at which a plan is good enough
     * @return the best plan with fewer than {@code known} units; if empty and not {@link #gaveUp()}, there is none
     */
    Optional<Cutting> better(long[] demand, long known, long target) {
        fewest = known;
        if (known > DEEPEST) {
            nodes = 0;
        } else {
            search(demand.clone(), 0, target);
        }
        return found;
    }

    /** @return whether the limit was reached, so that there may be better plans than the one found */
    boolean gaveUp() {
        return nodes <= 0;
    }

    private void search(long[] left, long used, long target) {
        if (Arrays.stream(left).allMatch(count -> count == 0)) {
            keep(used);
        } else if (!isHopeless(left, used)) {
            int largest = 0;
            while (left[largest] == 0) {
                largest++;
            }
            for (int[] pattern : fullPatterns(left, largest, used)) {
                if (fewest <= target || gaveUp()) {
                    return;
                }
                descend(pattern, left, used, target);
            }
        }
    }

    private void descend(int[] pattern, long[] left, long used, long target) {
        progress.checkCancelled();
        nodes--;
        add(left, pattern, -1);
        chosen.push(pattern);
        search(left, used + 1, target);
        chosen.pop();
        add(left, pattern, 1);
    }

    private boolean isHopeless(long[] left, long used) {
        if (used + relaxation.wholeBound(left) >= fewest) {
            return true;
        }
        List<Long> pieces = Arrays.stream(left).boxed().toList();
        if (seen.getOrDefault(pieces, Long.MAX_VALUE) <= used) {
            return true;
        }
        seen.put(pieces, used);
        return false;
    }

    private void keep(long used) {
        if (used < fewest) {
            fewest = used;
            Cutting cutting = new Cutting();
            chosen.forEach(pattern -> cutting.add(pattern, 1));
            found = Optional.of(cutting);
        }
    }

    /** Those worth most first, for they waste least; those not worth enough for a better plan are left out. */
    private List<int[]> fullPatterns(long[] left, int largest, long used) {
        List<int[]> patterns = new ArrayList<>();
        int[] pattern = new int[left.length];
        pattern[largest] = 1;
        long missing = relaxation.leastWorth(left, fewest - 1 - used) - relaxation.valueOfOne(largest);
        extend(pattern, largest, sizes.capacity() - sizes.size(largest), missing, left, patterns);
        patterns.sort(Comparator.comparingLong(relaxation::valueOf).reversed());
        return patterns;
    }

    private void extend(int[] pattern, int item, long room, long missing, long[] left, List<int[]> patterns) {
        nodes--;
        if (gaveUp() || room * densest[item] < missing) {
            return;
        }
        if (item == left.length) {
            if (isFull(pattern, room, left)) {
                patterns.add(pattern.clone());
            }
            return;
        }
        int least = pattern[item];
        long most = Math.min(left[item], least + room / sizes.size(item));
        for (long count = most; count >= least; count--) {
            pattern[item] = (int) count;
            long more = count - least;
            extend(pattern, item + 1, room - more * sizes.size(item), missing - more * relaxation.valueOfOne(item),
                    left,
                    patterns);
        }
        pattern[item] = least;
    }

    private boolean isFull(int[] pattern, long room, long[] left) {
        for (int item = 0; item < left.length; item++) {
            if (pattern[item] < left[item] && sizes.size(item) <= room) {
                return false;
            }
        }
        return true;
    }

    private static void add(long[] left, int[] pattern, int times) {
        for (int item = 0; item < left.length; item++) {
            left[item] += (long) times * pattern[item];
        }
    }
}
