package org.coursewright.bond.internal.filling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.LongBinaryOperator;

import org.coursewright.bond.internal.pieces.Spread;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunShape;

/**
 * The gauges with which a run may be filled: for n pieces and m joints in range the pieces fall short of n units by no
 * less than nothing and no more than n times the shortest piece does. Those that need few pieces other than whole units
 * come first, then those with a joint near the nominal.
 */
final class Gauges {

    /** Gauges of one number of pieces that are enough to find a good filling. */
    private static final int ENOUGH = 8;
    /** Runs no longer than so many units are short: all their gauges are looked at. */
    private static final int SHORT = 6;
    /** So many gauges are excluded at once where their joints differ little. */
    private static final int GROUP = 16;
    private static final int EVERY = 100_000;
    /** So many more pieces other than whole units than are needed are enough to find a good filling. */
    private static final int MORE_ODD = 4;

    private record Ranked(Gauge gauge, long odd, double uneven) implements Comparable<Ranked> {
        @Override
        public int compareTo(Ranked other) {
            return odd == other.odd ? Double.compare(uneven, other.uneven) : Long.compare(odd, other.odd);
        }
    }

    private final RunShape shape;
    private final Masonry masonry;
    private final Shortfalls shortfalls;
    private List<Gauge> all = List.of();
    private List<Gauge> some = List.of();

    Gauges(RunShape shape, Masonry masonry, Shortfalls shortfalls) {
        this.shape = shape;
        this.masonry = masonry;
        this.shortfalls = shortfalls;
    }

    List<Gauge> all() {
        if (all.isEmpty()) {
            all = find(EVERY);
        }
        return all;
    }

    /** A selection spread over those with few pieces other than whole units, the one nearest to the nominal joint among them. */
    List<Gauge> some() {
        if (some.isEmpty()) {
            some = shape.length() <= SHORT * masonry.whole() ? all() : find(ENOUGH);
        }
        return some;
    }

    /** Gauges in groups of one number of pieces whose shortfalls follow one another by the cut step. */
    List<List<Gauge>> groups(List<Gauge> gauges) {
        List<Gauge> sorted = new ArrayList<>(gauges);
        sorted.sort(Comparator.comparingInt(Gauge::pieces)
                .thenComparingLong(gauge -> gauge.shortfall() % shortfalls.step())
                .thenComparingLong(Gauge::shortfall));
        List<List<Gauge>> groups = new ArrayList<>();
        for (Gauge gauge : sorted) {
            if (groups.isEmpty() || !follows(groups.get(groups.size() - 1), gauge)) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(gauge);
        }
        return groups;
    }

    private boolean follows(List<Gauge> group, Gauge gauge) {
        Gauge last = group.get(group.size() - 1);
        return group.size() < GROUP && gauge.pieces() == last.pieces()
                && gauge.shortfall() == last.shortfall() + shortfalls.step();
    }

    private List<Gauge> find(int enough) {
        List<Ranked> ranked = new ArrayList<>();
        long most = Math.max(shortfalls.cutMost(), shortfalls.specialMost());
        long least = pinned(masonry.least(), Math::max);
        long widest = pinned(masonry.most(), Math::min);
        long fixed = shape.startJoints() + shape.endJoints() - 1L;
        for (int pieces = 1;; pieces++) {
            long joints = pieces + fixed;
            long over = pieces * masonry.whole() - shape.length();
            if (over + joints * masonry.least() > pieces * most) {
                break;
            }
            long from = Math.max(0, over + joints * least);
            long to = Math.min(pieces * most, over + joints * widest);
            for (int residue = 0; residue < shortfalls.residues(); residue++) {
                for (long shortfall : shortfalls(from, to, over + joints * masonry.nominal(), residue, enough)) {
                    ranked.add(rank(pieces, (int) joints, shortfall, shortfall - over, Math.max(1, most)));
                }
            }
        }
        Collections.sort(ranked);
        List<Gauge> gauges = new ArrayList<>();
        for (Ranked each : ranked) {
            if (enough == EVERY || each.odd() <= ranked.get(0).odd() + MORE_ODD) {
                gauges.add(each.gauge());
            }
        }
        return gauges;
    }

    /** The joint at one end of the range, narrowed to what is pinned. */
    private long pinned(long joint, LongBinaryOperator narrower) {
        return shape.pins().joints().stream().reduce(joint, narrower::applyAsLong);
    }

    /** Ascending, the one nearest to the nominal joint among them. */
    private long[] shortfalls(long from, long to, long nominal, int residue, int enough) {
        long rest = shortfalls.residue(residue);
        long[] found = Spread.multiples(from - rest, to - rest, shortfalls.step(), enough);
        for (int index = 0; index < found.length; index++) {
            found[index] += rest;
        }
        long nearest = Spread.lastMultiple(nominal - rest, shortfalls.step()) + rest;
        int place = Arrays.binarySearch(found, nearest);
        return nearest < from || nearest > to || place >= 0 ? found : with(found, -place - 1, nearest);
    }

    private static long[] with(long[] numbers, int place, long number) {
        long[] more = Arrays.copyOf(numbers, numbers.length + 1);
        System.arraycopy(numbers, place, more, place + 1, numbers.length - place);
        more[place] = number;
        return more;
    }

    private Ranked rank(int pieces, int joints, long shortfall, long jointTotal, long most) {
        double uneven = joints == 0 ? 0 : Math.abs((double) jointTotal / joints - masonry.nominal());
        return new Ranked(new Gauge(pieces, joints, jointTotal, shortfall), (shortfall + most - 1) / most, uneven);
    }
}
