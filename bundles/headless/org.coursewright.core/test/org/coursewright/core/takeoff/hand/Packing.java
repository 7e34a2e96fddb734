package org.coursewright.core.takeoff.hand;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * How many whole units cut pieces come out of, as somebody with paper and pencil finds it: the longest piece first, each into
 * the first unit with room, and a bound that shows that no packing does with fewer. Nothing of the engine is used.
 *
 * @param unit length of a whole unit
 * @param kerf lost between two pieces
 * @param pieces lengths
 */
record Packing(BigDecimal unit, BigDecimal kerf, List<BigDecimal> pieces) {

    Packing {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(kerf, "kerf");
        pieces = pieces.stream().sorted(Comparator.<BigDecimal>naturalOrder().reversed()).toList();
    }

    /** First fit, the longest first. */
    int units() {
        List<BigDecimal> room = new ArrayList<>();
        for (BigDecimal piece : sizes()) {
            int found = 0;
            while (found < room.size() && room.get(found).compareTo(piece) < 0) {
                found++;
            }
            if (found == room.size()) {
                room.add(capacity());
            }
            room.set(found, room.get(found).subtract(piece));
        }
        return room.size();
    }

    /**
     * The bound L2 of Martello and Toth, Discrete Applied Mathematics 28 (1990): pieces longer than half a unit each need their
     * own; what does not fit beside them needs more.
     */
    int atLeast() {
        BigDecimal half = capacity().divide(BigDecimal.valueOf(2));
        return Stream.concat(Stream.of(BigDecimal.ZERO), sizes().stream().filter(size -> size.compareTo(half) <= 0))
                .mapToInt(this::atLeast).max().orElse(0);
    }

    private int atLeast(BigDecimal small) {
        BigDecimal half = capacity().divide(BigDecimal.valueOf(2));
        List<BigDecimal> alone = sizes().stream().filter(size -> size.compareTo(capacity().subtract(small)) > 0)
                .toList();
        List<BigDecimal> large = sizes().stream().filter(size -> size.compareTo(capacity().subtract(small)) <= 0 && size
                .compareTo(half) > 0).toList();
        BigDecimal rest = sizes().stream().filter(size -> size.compareTo(half) <= 0 && size.compareTo(small) >= 0)
                .reduce(
                        BigDecimal.ZERO, BigDecimal::add);
        BigDecimal room = large.stream().map(capacity()::subtract).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal over = rest.subtract(room).max(BigDecimal.ZERO);
        return alone.size() + large.size() + over.divide(capacity(), 0, RoundingMode.UP).intValueExact();
    }

    private BigDecimal capacity() {
        return unit.add(kerf);
    }

    private List<BigDecimal> sizes() {
        return pieces.stream().map(piece -> piece.add(kerf)).toList();
    }
}
