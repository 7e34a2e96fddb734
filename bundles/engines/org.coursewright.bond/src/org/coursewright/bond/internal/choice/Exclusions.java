package org.coursewright.bond.internal.choice;

import java.util.Arrays;

/**
 * Which choices of some runs exclude one another. A combination of choices, one for each run, is told by its index: that of
 * the first run's choice counts most, that of the last least, as in {@link CostTable}. Does not change; two are the same
 * only if they are one.
 */
public final class Exclusions {

    /** Combinations of the other runs are numbered as they come while they are no more than these. */
    private static final long MOST_NUMBERED = 4096;

    private static final long EXCLUDED = WallCost.of(1, 0, 0);

    private final int[] sizes;
    private final long[] indexes;
    private final BitRows[] rows;
    private long[] costs = {};

    private Exclusions(int[] sizes, long[] indexes) {
        this.sizes = sizes;
        this.indexes = indexes;
        rows = new BitRows[sizes.length];
    }

    /** @param sizes how many choices each run has */
    public static Exclusions none(int... sizes) {
        return new Exclusions(sizes, new long[0]);
    }

    /** Those combinations of two choices that are marked. */
    public static Exclusions of(int first, int second, boolean[] excluded) {
        long[] indexes = new long[excluded.length];
        int count = 0;
        for (int index = 0; index < excluded.length; index++) {
            if (excluded[index]) {
                indexes[count++] = index;
            }
        }
        return new Exclusions(new int[]{first, second}, Arrays.copyOf(indexes, count));
    }

    /** These and further combinations. */
    public Exclusions with(long... more) {
        long[] added = more.clone();
        Arrays.sort(added);
        long[] merged = new long[indexes.length + added.length];
        int count = 0;
        int next = 0;
        for (long index : indexes) {
            while (next < added.length && added[next] < index) {
                count = append(merged, count, added[next++]);
            }
            count = append(merged, count, index);
        }
        while (next < added.length) {
            count = append(merged, count, added[next++]);
        }
        return new Exclusions(sizes, Arrays.copyOf(merged, count));
    }

    /** Puts an index behind those before, unless it is the last of them. */
    private static int append(long[] indexes, int count, long index) {
        if (count > 0 && indexes[count - 1] == index) {
            return count;
        }
        indexes[count] = index;
        return count + 1;
    }

    /** How many combinations are excluded. */
    public int count() {
        return indexes.length;
    }

    /** How many combinations there are; so many or more than fit. */
    long combinations() {
        long all = 1;
        for (int size : sizes) {
            all = Math.min(Integer.MAX_VALUE, all * size);
        }
        return all;
    }

    /** The index of the combination that holds a run's choice at each place of the scope. */
    public long index(int[] scope, int[] chosen) {
        long index = 0;
        for (int place = 0; place < scope.length; place++) {
            index = index * sizes[place] + chosen[scope[place]];
        }
        return index;
    }

    /** Whether the combination that holds a run's choice at each place of the scope is excluded. */
    public boolean holds(int[] scope, int[] chosen) {
        return Arrays.binarySearch(indexes, index(scope, chosen)) >= 0;
    }

    /** As costs of these runs together; only for few combinations. */
    CostTable costs(int[] scope) {
        if (costs.length == 0) {
            costs = new long[Math.toIntExact(combinations())];
            for (long index : indexes) {
                costs[(int) index] = EXCLUDED;
            }
        }
        return new CostTable(scope, sizes, costs);
    }

    private long stride(int place) {
        long stride = 1;
        for (int later = place + 1; later < sizes.length; later++) {
            stride *= sizes[later];
        }
        return stride;
    }

    /** By choice of one run, the combinations of the others that exclude it. */
    BitRows rows(int place) {
        if (rows[place] == null) {
            rows[place] = rows(place, stride(place));
        }
        return rows[place];
    }

    private BitRows rows(int place, long stride) {
        int size = sizes[place];
        long[] rests = new long[indexes.length];
        for (int at = 0; at < rests.length; at++) {
            rests[at] = indexes[at] / stride / size * stride + indexes[at] % stride;
        }
        long others = combinations() / size;
        long[] seen = others > MOST_NUMBERED ? Arrays.stream(rests).sorted().distinct().toArray() : new long[0];
        BitRows found = new BitRows(size, (int) (others > MOST_NUMBERED ? seen.length : others));
        for (int at = 0; at < rests.length; at++) {
            int column = (int) (others > MOST_NUMBERED ? Arrays.binarySearch(seen, rests[at]) : rests[at]);
            found.set((int) (indexes[at] / stride % size), column);
        }
        return found;
    }

    /**
     * What is left when only some choices are.
     *
     * @param kept by place, which choices are left
     */
    Exclusions among(int[][] kept) {
        int[] sizesLeft = new int[sizes.length];
        int[][] now = new int[sizes.length][];
        for (int place = 0; place < sizes.length; place++) {
            sizesLeft[place] = kept[place].length;
            now[place] = new int[sizes[place]];
            Arrays.fill(now[place], -1);
            for (int value = 0; value < kept[place].length; value++) {
                now[place][kept[place][value]] = value;
            }
        }
        long[] left = new long[indexes.length];
        int count = 0;
        for (long index : indexes) {
            long moved = moved(index, now, sizesLeft);
            if (moved >= 0) {
                left[count++] = moved;
            }
        }
        long[] ascending = Arrays.copyOf(left, count);
        Arrays.sort(ascending);
        return new Exclusions(sizesLeft, ascending);
    }

    /** Where a combination stands among those left, or -1. */
    private long moved(long index, int[][] now, int[] sizesLeft) {
        long rest = index;
        long moved = 0;
        long stride = 1;
        for (int place = sizes.length - 1; place >= 0; place--) {
            int value = now[place][(int) (rest % sizes[place])];
            if (value < 0) {
                return -1;
            }
            moved += value * stride;
            stride *= sizesLeft[place];
            rest /= sizes[place];
        }
        return moved;
    }

    /**
     * The same with the choices of one run told apart further.
     *
     * @param parts for the choices now, the choice that each is part of
     */
    public Exclusions split(int place, int[] parts) {
        int size = sizes[place];
        int[][] partsOf = new int[size][0];
        for (int part = 0; part < parts.length; part++) {
            int[] before = partsOf[parts[part]];
            partsOf[parts[part]] = Arrays.copyOf(before, before.length + 1);
            partsOf[parts[part]][before.length] = part;
        }
        long stride = stride(place);
        int[] sizesNow = sizes.clone();
        sizesNow[place] = parts.length;
        long[] now = Arrays.stream(indexes).flatMap(index -> {
            long start = index / stride / size * parts.length;
            return Arrays.stream(partsOf[(int) (index / stride % size)])
                    .mapToLong(part -> (start + part) * stride + index % stride);
        }).sorted().toArray();
        return new Exclusions(sizesNow, now);
    }
}
