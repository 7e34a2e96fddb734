package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import org.coursewright.takeoff.Fraction;

/** Shares whole things out by weight: everybody gets the whole part, the largest remainders get one more (Hamilton). */
final class Share {

    private Share() {
    }

    /**
     * @param total to share out, zero or more
     * @param weights zero or more each, not all zero unless the total is
     * @return as many parts as weights, adding up to the total
     */
    static List<Long> out(long total, List<Fraction> weights) {
        Fraction sum = weights.stream().reduce(Fraction.ZERO, Fraction::plus);
        if (sum.signum() == 0) {
            return IntStream.range(0, weights.size()).mapToObj(i -> i == 0 ? total : 0L).toList();
        }
        List<Fraction> exact = weights.stream().map(weight -> weight.times(total).dividedBy(sum)).toList();
        List<Long> parts = new ArrayList<>(exact.stream().map(Fraction::floor).toList());
        long left = total - parts.stream().mapToLong(Long::longValue).sum();
        List<Integer> byRemainder = IntStream.range(0, parts.size()).boxed()
                .sorted(Comparator.comparing((Integer i) -> exact.get(i).minus(Fraction.of(parts.get(i)))).reversed())
                .toList();
        for (int i = 0; i < left; i++) {
            parts.set(byRemainder.get(i), parts.get(byRemainder.get(i)) + 1);
        }
        return parts;
    }
}
