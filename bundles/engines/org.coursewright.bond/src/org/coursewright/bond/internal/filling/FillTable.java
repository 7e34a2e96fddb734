package org.coursewright.bond.internal.filling;

import java.util.Arrays;

import org.coursewright.bond.internal.choice.BitRow;
import org.coursewright.bond.internal.choice.WorkLimit;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunShape;

/**
 * Fills a run with a given gauge, piece after piece: which shortfalls the first k pieces may have together, with how many
 * windows met and how many cuts made so far. All joints are equal, so the shortfall says where the joint after them lies.
 * Every order of every choice of pieces is among them, so the fewest cuts found are the fewest there are. A shortfall is
 * one bit, and adding a cut piece of any length a few shifts; the work is the number of pieces times the number of cuts.
 */
public final class FillTable {

    private final RunShape shape;
    private final Masonry masonry;
    private final Shortfalls shortfalls;
    private final WorkLimit limit;
    private final PinMask pins;
    private final ClearShortfalls clear;
    private Gauge gauge = new Gauge(1, 0, 0, 0);
    private Gauge furthest = gauge;
    private int violations;
    private boolean ends;
    private int cuts;
    private int words;
    /** Words of all residues together. */
    private int row;
    private long[] reached = new long[0];
    private long[] struck = new long[0];
    private long[] moved = new long[0];
    private long[] begun = new long[0];
    private long[] ended = new long[0];
    /** Words in which shortfalls may lie that have been reached and from which the end can be reached. */
    private int low;
    private int high;

    FillTable(RunShape shape, Masonry masonry, Shortfalls shortfalls, WorkLimit limit) {
        this.limit = limit;
        this.shape = shape;
        this.masonry = masonry;
        this.shortfalls = shortfalls;
        pins = new PinMask(shape, masonry, shortfalls);
        clear = new ClearShortfalls(shape, masonry, shortfalls);
    }

    /** The fewest windows met and, with as few, the fewest cuts. */
    public record Score(int violations, int cuts) {
    }

    static final Score UNFILLED = new Score(Integer.MAX_VALUE, Integer.MAX_VALUE);

    /**
     * Fills the run.
     *
     * @param mostViolations fillings that meet more windows are not wanted
     * @param mostCuts fillings with more cuts are not wanted
     * @return {@link #UNFILLED} if there is none
     */
    Score fill(Gauge with, Windows.Grid keepingClear, int mostViolations, int mostCuts) {
        return fill(with, keepingClear, mostViolations, mostCuts, true);
    }

    /** The same where windows that the joints at the ends of the run meet count only if {@code withEnds}. */
    Score fill(Gauge with, Windows.Grid keepingClear, int mostViolations, int mostCuts, boolean withEnds) {
        ends = withEnds;
        use(with, with, keepingClear);
        violations = mostViolations;
        cuts = mostCuts;
        return reach(gauge.pieces()) ? score() : UNFILLED;
    }

    /**
     * Whether the run may be filled with one of several gauges with as many pieces; a "no" is a proof. Windows count only
     * where the joint lies in them with every one of these gauges.
     *
     * @param first the one with the least shortfall
     * @param last the one with the greatest, as many whole cut steps more
     */
    boolean mayFill(Gauge first, Gauge last, Windows.Grid keepingClear, int mostViolations, int mostCuts) {
        ends = true;
        use(first, last, keepingClear);
        violations = mostViolations;
        cuts = mostCuts;
        if (!reach(first.pieces())) {
            return false;
        }
        for (long shortfall = first.shortfall(); shortfall <= last.shortfall(); shortfall += shortfalls.step()) {
            if (score(shortfall) != UNFILLED) {
                return true;
            }
        }
        return false;
    }

    private void use(Gauge first, Gauge last, Windows.Grid windows) {
        gauge = first;
        furthest = last;
        clear.use(first, last, windows);
    }

    private boolean reach(int most) {
        words = Math.toIntExact(furthest.shortfall() / shortfalls.step() >> 6) + 1;
        row = words * shortfalls.residues();
        allocate();
        start();
        boolean narrow = violations == 0 && row == 1 && !shape.isRaked() && pins.isEmpty();
        for (int pieces = 1; pieces <= most; pieces++) {
            narrow(pieces);
            limit.spend((long) (violations + 1) * (cuts + 1) * shortfalls.residues() * (high - low + 1));
            if (low > high || !(narrow ? extendNarrow(pieces) : extend(pieces))) {
                return false;
            }
        }
        return true;
    }

    /** Leaves out words that so many pieces cannot reach, and those from which the others cannot make up what is missing. */
    private void narrow(int pieces) {
        long least = gauge.shortfall() - shortfalls.most(gauge.pieces() - pieces, cuts);
        low = (int) (Math.max(0, least / shortfalls.step() - 1) >> 6);
        high = (int) Math.min(words - 1, shortfalls.most(pieces, cuts) / shortfalls.step() >> 6);
    }

    /** How many windows the joints at the ends of the run meet, which do not depend on the order of its pieces. */
    int atEnds(Gauge with, Windows.Grid keepingClear) {
        use(with, with, keepingClear);
        int start = shape.startJoints() == 1 ? hits(0, 0) : 0;
        return start + (shape.endJoints() == 1 ? hits(gauge.pieces(), gauge.shortfall()) : 0);
    }

    private void allocate() {
        int layers = (violations + 1) * (cuts + 1);
        int size = (gauge.pieces() + 1) * layers * row;
        if (reached.length < size) {
            reached = new long[size];
        } else {
            Arrays.fill(reached, 0, size, 0);
        }
        clear.begin(words, violations);
        moved = grown(moved, (cuts + 2) * row);
        struck = grown(struck, row);
        begun = grown(begun, row);
        ended = grown(ended, row);
    }

    private static long[] grown(long[] array, int size) {
        return array.length < size ? new long[size] : array;
    }

    private void start() {
        int hits = ends && shape.startJoints() == 1 ? hits(0, 0) : 0;
        if (hits <= violations && pins.isStartClear(gauge)) {
            BitRow.set(reached, at(0, hits, 0), 0);
        }
    }

    private int at(int pieces, int met, int made) {
        return ((pieces * (violations + 1) + met) * (cuts + 1) + made) * row;
    }

    private long parts() {
        return Math.max(gauge.joints(), 1);
    }

    private boolean hasJoint(int pieces) {
        return pieces < gauge.pieces() || ends && shape.endJoints() == 1;
    }

    /** What {@link #extend} does, where a set is one word and nothing may be met; nearly all fillings are of this kind. */
    private boolean extendNarrow(int pieces) {
        long allowed = hasJoint(pieces) ? clear.word(pieces) : -1L;
        int before = (pieces - 1) * (cuts + 1);
        int now = pieces * (cuts + 1);
        int specials = shortfalls.specials();
        long cut = 0;
        long any = 0;
        for (int made = 0; made <= cuts; made++) {
            long from = reached[before + made];
            long to = from | cut;
            for (int kind = 0; kind < specials; kind++) {
                to |= BitRow.shifted(from, shortfalls.carried(kind, 0));
            }
            cut = from == 0 || !shortfalls.canCut()
                    ? 0
                    : BitRow.spread(BitRow.shifted(from, shortfalls.carried(specials, 0)), shortfalls.cutSteps());
            to &= allowed;
            reached[now + made] = to;
            any |= to;
        }
        return any != 0;
    }

    private boolean extend(int pieces) {
        if (hasJoint(pieces)) {
            clear.find(pieces, low, high);
        } else {
            clear.all(low, high);
        }
        if (shape.isRaked()) {
            findRakes(pieces);
        }
        boolean any = false;
        for (int met = 0; met <= violations; met++) {
            boolean moves = false;
            for (int made = 0; made <= cuts; made++) {
                if (!BitRow.isEmpty(reached, at(pieces - 1, met, made), row)) {
                    if (!moves) {
                        clearMoved();
                        moves = true;
                    }
                    add(pieces, at(pieces - 1, met, made), made);
                }
            }
            any |= moves && keep(pieces, met);
        }
        return any;
    }

    private void clearMoved() {
        for (int set = 0; set < (cuts + 2) * row; set += words) {
            for (int word = low; word <= high; word++) {
                moved[set + word] = 0;
            }
        }
    }

    /** Shortfalls with which the next piece begins under the rake at the start, and with which it ends under the other. */
    private void findRakes(int pieces) {
        Arrays.fill(begun, 0, row, 0);
        Arrays.fill(ended, 0, row, 0);
        long joints = (pieces - 1L + shape.startJoints()) * gauge.jointTotal();
        if (shape.rakeStart() > 0) {
            shortfalls.mark(begun, words, parts(),
                    ((pieces - 1) * masonry.whole() - shape.rakeStart()) * parts() + joints,
                    Long.MAX_VALUE / 4);
        }
        if (shape.rakeEnd() > 0) {
            shortfalls.mark(ended, words, parts(), Long.MIN_VALUE / 4,
                    (pieces * masonry.whole() - shape.length() + shape.rakeEnd()) * parts() + joints);
        }
    }

    private void add(int pieces, int from, int made) {
        if (!pins.isEmpty()) {
            addPinned(pieces, from, made);
            return;
        }
        for (int residue = 0; residue < shortfalls.residues(); residue++) {
            addWhole(from, made, residue);
            for (int kind = 0; kind < shortfalls.specials(); kind++) {
                addSpecial(from, made, residue, kind);
            }
            if (shortfalls.canCut() && made < cuts) {
                addCut(from, made, residue);
            }
        }
    }

    /** Adds every length for itself, after those shortfalls only that it may follow. */
    private void addPinned(int pieces, int from, int made) {
        long[] all = Arrays.copyOfRange(reached, from, from + row);
        restrict(all, pieces, from, masonry.whole());
        for (int residue = 0; residue < shortfalls.residues(); residue++) {
            addWhole(from, made, residue);
        }
        for (int kind = 0; kind < shortfalls.specials(); kind++) {
            restrict(all, pieces, from, masonry.whole() - shortfalls.of(kind));
            for (int residue = 0; residue < shortfalls.residues(); residue++) {
                addSpecial(from, made, residue, kind);
            }
        }
        for (int step = 0; step < shortfalls.cutSteps() && made < cuts; step++) {
            restrict(all, pieces, from, masonry.cutMost() - step * shortfalls.step());
            addCuts(from, made, step);
        }
        System.arraycopy(all, 0, reached, from, row);
    }

    private void restrict(long[] all, int pieces, int from, long length) {
        long[] allowed = all.clone();
        pins.restrict(allowed, words, gauge, pieces - 1, length);
        System.arraycopy(allowed, 0, reached, from, row);
    }

    /** Adds cut pieces so many steps shorter than the longest. */
    private void addCuts(int from, int made, int step) {
        int kind = shortfalls.specials();
        for (int residue = 0; residue < shortfalls.residues(); residue++) {
            int target = shortfalls.to(kind, residue);
            if (target != Shortfalls.NOWHERE) {
                BitRow.addShifted(moved, (made + 1) * row + target * words, reached, from + residue * words, low,
                        high, shortfalls.carried(kind, residue) + step);
            }
        }
    }

    private void addWhole(int from, int made, int residue) {
        int to = made * row + residue * words;
        for (int word = low; word <= high; word++) {
            long before = reached[from + residue * words + word];
            long raked = shape.isRaked() ? before & (begun[residue * words + word] | ended[residue * words + word]) : 0;
            moved[to + word] |= before & ~raked;
            moved[to + row + word] |= raked;
        }
    }

    private void addSpecial(int from, int made, int residue, int kind) {
        int target = shortfalls.to(kind, residue);
        if (target == Shortfalls.NOWHERE) {
            return;
        }
        int shift = shortfalls.carried(kind, residue);
        int to = made * row + target * words;
        if (!shape.isRaked()) {
            BitRow.addShifted(moved, to, reached, from + residue * words, low, high, shift);
            return;
        }
        long[] level = new long[words];
        long[] raked = new long[words];
        for (int word = 0; word < words; word++) {
            long before = reached[from + residue * words + word];
            level[word] = before & ~begun[residue * words + word];
            raked[word] = before & begun[residue * words + word];
        }
        BitRow.addShifted(moved, to + row, raked, 0, words, shift);
        Arrays.fill(raked, 0);
        BitRow.addShifted(raked, 0, level, 0, words, shift);
        for (int word = 0; word < words; word++) {
            moved[to + word] |= raked[word] & ~ended[target * words + word];
            moved[to + row + word] |= raked[word] & ended[target * words + word];
        }
    }

    private void addCut(int from, int made, int residue) {
        int kind = shortfalls.specials();
        int target = shortfalls.to(kind, residue);
        if (target == Shortfalls.NOWHERE) {
            return;
        }
        int steps = shortfalls.cutSteps();
        int least = Math.max(0, low - (steps >> 6) - 1);
        Arrays.fill(struck, least, high + 1, 0);
        BitRow.addShifted(struck, 0, reached, from + residue * words, least, high, shortfalls.carried(kind, residue));
        BitRow.spread(struck, 0, least, high, steps);
        int to = (made + 1) * row + target * words;
        for (int word = low; word <= high; word++) {
            moved[to + word] |= struck[word];
        }
    }

    /** Keeps what has been reached where the joint after the pieces lies clear enough. */
    private boolean keep(int pieces, int met) {
        long any = 0;
        for (int hits = 0; met + hits <= violations; hits++) {
            for (int made = 0; made <= cuts; made++) {
                int to = at(pieces, met + hits, made);
                for (int residue = 0; residue < row; residue += words) {
                    any |= keep(to + residue, made * row + residue, hits * row + residue);
                }
            }
        }
        return any != 0;
    }

    private long keep(int to, int from, int where) {
        long any = 0;
        for (int word = low; word <= high; word++) {
            long kept = moved[from + word] & clear.at(where + word);
            reached[to + word] |= kept;
            any |= kept;
        }
        return any;
    }

    private Score score() {
        return score(gauge.shortfall());
    }

    private Score score(long shortfall) {
        for (int met = 0; met <= violations; met++) {
            for (int made = 0; made <= cuts; made++) {
                if (isReached(gauge.pieces(), met, made, shortfall)) {
                    return new Score(met, made);
                }
            }
        }
        return UNFILLED;
    }

    /** How many windows the joint after so many pieces with that shortfall meets. */
    int hits(int pieces, long shortfall) {
        if (pieces > 0 && !hasJoint(pieces)) {
            return 0;
        }
        return clear.hits(pieces, shortfall);
    }

    Gauge gauge() {
        return gauge;
    }

    /** Whether so many pieces with that shortfall have been reached so. */
    boolean isReached(int pieces, int met, int made, long shortfall) {
        int residue = shortfall < 0 || met < 0 || made < 0 ? Shortfalls.NOWHERE : shortfalls.residueOf(shortfall);
        return residue != Shortfalls.NOWHERE && BitRow.get(reached, at(pieces, met, made) + residue * words,
                Math.toIntExact(shortfall / shortfalls.step()));
    }

    /** Whether a gauge with as many pieces as the one filled with has been reached with no more cuts than that. */
    boolean isReached(Gauge other, int mostCuts) {
        for (int made = 0; made <= mostCuts; made++) {
            if (isReached(other.pieces(), 0, made, other.shortfall())) {
                return true;
            }
        }
        return false;
    }

    /** Whether pins let a piece of that length come after so many others with that shortfall. */
    boolean allows(int before, long shortfall, long length) {
        return pins.isEmpty() || pins.allows(gauge, before, shortfall, length);
    }

    /** Whether the piece of that length that comes after so many others with that shortfall is cut along a rake. */
    boolean isRaked(int before, long shortfall, long length) {
        long joints = (before + shape.startJoints()) * gauge.jointTotal();
        long from = (before * masonry.whole() - shortfall) * parts() + joints;
        return shape.isRaked() && (from < shape.rakeStart() * parts()
                || from + length * parts() > (shape.length() - shape.rakeEnd()) * parts());
    }
}
