package org.coursewright.takeoff.nesting.internal;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.nesting.CutStock;

/**
 * The sizes of a cutting problem as small integers: each piece with one kerf, largest first, all divided by their common
 * divisor. A pattern is an array with the number of pieces of each size.
 */
final class Sizes {

    private final List<Length> lengths;
    private final long[] sizes;
    private final long capacity;

    Sizes(CutStock stock, Iterable<Length> descendingLengths) {
        lengths = java.util.stream.StreamSupport.stream(descendingLengths.spliterator(), false).toList();
        BigInteger divisor = BigInteger.ZERO;
        for (Length length : lengths) {
            divisor = divisor.gcd(BigInteger.valueOf(stock.sizeOf(length).units()));
        }
        long common = Math.max(1, divisor.longValueExact());
        sizes = lengths.stream().mapToLong(length -> stock.sizeOf(length).units() / common).toArray();
        capacity = stock.capacity().units() / common;
    }

    int count() {
        return sizes.length;
    }

    long size(int item) {
        return sizes[item];
    }

    long capacity() {
        return capacity;
    }

    Length length(int item) {
        return lengths.get(item);
    }

    long[] demand(Map<Length, Long> pieces) {
        return lengths.stream().mapToLong(pieces::get).toArray();
    }
}
