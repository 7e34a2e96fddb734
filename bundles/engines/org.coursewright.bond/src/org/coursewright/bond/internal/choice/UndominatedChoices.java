package org.coursewright.bond.internal.choice;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Finds the choices of a run for which no other is no dearer and excluded by no more. Remembers what it found in this sum
 * and the last, so that runs between the same exclusions get the same arrays, and sums over them are taken once.
 */
public final class UndominatedChoices {

    /** Of what excludes choices, the run at one place. */
    record Side(Exclusions exclusions, int place) {
    }

    private record Around(long[] own, List<Side> sides) {
    }

    /** Arrays compare by identity, so equal keys mean the same ones. */
    private record Kept(Object from, List<int[]> kept) {
    }

    private final RecentlyUsed<Around, int[]> needed = new RecentlyUsed<>();
    private final RecentlyUsed<Kept, long[]> costs = new RecentlyUsed<>();
    private final RecentlyUsed<Kept, int[]> indexes = new RecentlyUsed<>();
    private final RecentlyUsed<Kept, Exclusions> exclusions = new RecentlyUsed<>();

    private final boolean shuffled;

    private UndominatedChoices(boolean shuffled) {
        this.shuffled = shuffled;
    }

    /** Of choices that cost the same and are excluded alike, the first is kept and comes first. */
    public static UndominatedChoices inOrder() {
        return new UndominatedChoices(false);
    }

    /** Of these, any one is kept and comes first, so that a sum rests on others; the same ones each time. */
    public static UndominatedChoices shuffled() {
        return new UndominatedChoices(true);
    }

    /** To be called before each sum. */
    void begin() {
        needed.begin();
        costs.begin();
        indexes.begin();
        exclusions.begin();
    }

    /** The indexes of choices that are needed, one at least; in the order in which they come first, or as they are if all are. */
    int[] find(long[] own, List<Side> sides) {
        return needed.get(new Around(own, sides), () -> undominated(own, sides));
    }

    private int[] undominated(long[] own, List<Side> sides) {
        int[] order = order(own.length);
        BitRows[] rows = sides.stream().map(side -> side.exclusions().rows(side.place())).toArray(BitRows[]::new);
        int[] kept = new int[own.length];
        int count = 0;
        for (int value : IntStream.of(order).boxed().sorted(Comparator.comparingLong(index -> own[index])).toList()) {
            if (!isDominated(value, kept, count, rows)) {
                kept[count++] = value;
            }
        }
        int[] few = Arrays.copyOf(kept, count);
        Arrays.sort(few);
        return !shuffled || count == own.length
                ? few
                : IntStream.of(order).filter(value -> Arrays.binarySearch(few, value) >= 0).toArray();
    }

    private int[] order(int size) {
        int[] order = IntStream.range(0, size).toArray();
        Random random = new Random(size);
        for (int place = size - 1; place > 0 && shuffled; place--) {
            int other = random.nextInt(place + 1);
            int moved = order[place];
            order[place] = order[other];
            order[other] = moved;
        }
        return order;
    }

    private static boolean isDominated(int value, int[] kept, int count, BitRows[] rows) {
        for (int index = 0; index < count; index++) {
            if (isWithin(kept[index], value, rows)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWithin(int few, int many, BitRows[] rows) {
        for (BitRows each : rows) {
            if (!each.isWithin(few, many)) {
                return false;
            }
        }
        return true;
    }

    long[] among(long[] all, int[] kept) {
        return costs.get(new Kept(all, List.of(kept)),
                () -> Arrays.stream(kept).mapToLong(index -> all[index]).toArray());
    }

    int[] among(int[] all, int[] kept) {
        return indexes.get(new Kept(all, List.of(kept)),
                () -> Arrays.stream(kept).map(index -> all[index]).toArray());
    }

    /** @param kept by place, which choices are left */
    Exclusions among(Exclusions all, List<int[]> kept) {
        return exclusions.get(new Kept(all, kept), () -> all.among(kept.toArray(int[][]::new)));
    }
}
