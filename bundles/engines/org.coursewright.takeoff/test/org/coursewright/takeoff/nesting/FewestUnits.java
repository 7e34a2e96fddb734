package org.coursewright.takeoff.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The slow way: the fewest units for every remainder of the demand, by trying every pattern. */
final class FewestUnits {

    private final long capacity;
    private final long[] sizes;
    private final Map<List<Integer>, Integer> known = new HashMap<>();

    FewestUnits(long capacity, long[] sizes) {
        this.capacity = capacity;
        this.sizes = sizes.clone();
    }

    int units(int[] demand) {
        if (Arrays.stream(demand).sum() == 0) {
            return 0;
        }
        List<Integer> key = Arrays.stream(demand).boxed().toList();
        Integer before = known.get(key);
        if (before == null) {
            List<int[]> rests = new ArrayList<>();
            rests(demand.clone(), 0, capacity, rests);
            before = rests.stream().filter(rest -> !Arrays.equals(rest, demand)).mapToInt(this::units).min()
                    .orElseThrow() + 1;
            known.put(key, before);
        }
        return before;
    }

    private void rests(int[] left, int item, long room, List<int[]> rests) {
        if (item == left.length) {
            rests.add(left.clone());
            return;
        }
        int wanted = left[item];
        for (int count = 0; count <= wanted && count * sizes[item] <= room; count++) {
            left[item] = wanted - count;
            rests(left, item + 1, room - count * sizes[item], rests);
        }
        left[item] = wanted;
    }
}
