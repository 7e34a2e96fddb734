package org.coursewright.exchange.sheet.layout;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.coursewright.bond.PieceStock;
import org.coursewright.measure.Length;

/**
 * Which pieces are cut from one unit: the longest piece first, each from the shortest offcut it fits, else from a new
 * unit (best fit decreasing, Johnson 1974). That is simple to follow at the saw; that no plan needs fewer units is not
 * proven.
 */
final class CutPlan {

    /**
     * Units that are cut the same way.
     *
     * @param units how many
     * @param pieces cut from each, the longest first
     * @param left of each when all is cut
     */
    record Line(long units, List<Length> pieces, Length left) {
    }

    private static final Comparator<Line> LONGEST_FIRST = Comparator
            .comparing((Line line) -> line.pieces().get(0)).reversed().thenComparing(Line::left);

    private final PieceStock stock;
    private final NavigableMap<Length, Deque<List<Length>>> offcuts = new TreeMap<>();

    private CutPlan(PieceStock stock) {
        this.stock = stock;
    }

    /** Plans the cuts for pieces, given by how many there are of each length. */
    static List<Line> of(NavigableMap<Length, Long> pieces, PieceStock stock) {
        CutPlan plan = new CutPlan(stock);
        pieces.descendingMap().forEach((length, count) -> {
            for (long i = 0; i < count; i++) {
                plan.cut(length);
            }
        });
        return plan.lines();
    }

    private void cut(Length length) {
        Map.Entry<Length, Deque<List<Length>>> tightest = offcuts.ceilingEntry(length);
        if (tightest == null) {
            put(stock.whole().minus(length), List.of(length));
            return;
        }
        List<Length> before = tightest.getValue().removeFirst();
        if (tightest.getValue().isEmpty()) {
            offcuts.remove(tightest.getKey());
        }
        List<Length> now = new ArrayList<>(before);
        now.add(length);
        put(tightest.getKey().minus(length), List.copyOf(now));
    }

    /** What lies beyond a piece is an offcut once the saw has taken its kerf. */
    private void put(Length beyond, List<Length> pieces) {
        Length left = beyond.isGreaterThan(stock.kerf()) ? beyond.minus(stock.kerf()) : Length.ZERO;
        offcuts.computeIfAbsent(left, length -> new ArrayDeque<>()).add(pieces);
    }

    private List<Line> lines() {
        return offcuts.entrySet().stream().flatMap(offcut -> offcut.getValue().stream()
                .collect(Collectors.groupingBy(pieces -> pieces, java.util.LinkedHashMap::new, Collectors.counting()))
                .entrySet().stream().map(same -> new Line(same.getValue(), same.getKey(), offcut.getKey())))
                .sorted(LONGEST_FIRST).toList();
    }
}
