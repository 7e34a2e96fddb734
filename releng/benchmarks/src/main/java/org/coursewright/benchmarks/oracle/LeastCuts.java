package org.coursewright.benchmarks.oracle;

import java.util.Arrays;
import java.util.OptionalInt;
import java.util.TreeMap;

import org.coursewright.bond.WallFace;

/**
 * The fewest cuts with which so many pieces fill a stretch, laps and rakes left out of account: a table over the number
 * of pieces and their sum. Empty where nothing fills it.
 */
final class LeastCuts {

    private static final int NEVER = Integer.MAX_VALUE / 2;

    private final WallFace wall;
    private final PieceLengths lengths;
    private final long grid;

    LeastCuts(WallFace wall) {
        this.wall = wall;
        this.lengths = PieceLengths.of(wall.stock());
        long common = 0;
        for (long length : lengths.all()) {
            common = gcd(common, length);
        }
        this.grid = common;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /** @return by number of pieces the fewest cuts; no entry where so many pieces cannot fill the stretch */
    TreeMap<Integer, Integer> byPieces(Stretch stretch) {
        TreeMap<Integer, Integer> least = new TreeMap<>();
        int[] cuts = new int[(int) (stretch.length() / grid) + 1];
        Arrays.fill(cuts, NEVER);
        cuts[0] = 0;
        long shortest = lengths.all().first();
        for (int pieces = 1; pieces * shortest <= stretch.length(); pieces++) {
            cuts = onePieceMore(cuts);
            int fewest = fewest(cuts, stretch, stretch.joints(pieces));
            if (fewest < NEVER) {
                least.put(pieces, fewest);
            }
        }
        return least;
    }

    /** @return the fewest cuts that fill the stretch, or empty if nothing does */
    OptionalInt fewest(Stretch stretch) {
        return byPieces(stretch).values().stream().mapToInt(Integer::intValue).min();
    }

    private int[] onePieceMore(int[] before) {
        int[] after = new int[before.length];
        Arrays.fill(after, NEVER);
        lengths.uncut().forEach(length -> add(before, after, (int) (length / grid), 0));
        lengths.cut().forEach(length -> add(before, after, (int) (length / grid), 1));
        return after;
    }

    private static void add(int[] before, int[] after, int length, int cost) {
        for (int sum = length; sum < after.length; sum++) {
            after[sum] = Math.min(after[sum], before[sum - length] + cost);
        }
    }

    private int fewest(int[] cuts, Stretch stretch, int joints) {
        long shortestSum = stretch.length() - joints * wall.rule().most().units();
        long longestSum = stretch.length() - joints * wall.rule().least().units();
        int fewest = NEVER;
        for (long sum = Math.max(0, -Math.floorDiv(-shortestSum, grid)); sum * grid <= longestSum; sum++) {
            fewest = Math.min(fewest, cuts[(int) sum]);
        }
        return fewest;
    }
}
