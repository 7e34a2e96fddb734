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
    private final NextPiece next;
    private Gauge gauge = new Gauge(1, 0, 0, 0);
    private Gauge furthest = gauge;
    private int violations;
    private boolean ends;
    private int cuts;
    private int words;
    /** Words of all residues together. */
    private int row;
    private long[] reached = new long[0];
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
        next = new NextPiece(shape, shortfalls, pins);
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
        next.begin(gauge, words, cuts);
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
        next.after(pieces - 1, low, high);
        boolean any = false;
        for (int met = 0; met <= violations; met++) {
            boolean moves = false;
            for (int made = 0; made <= cuts; made++) {
                if (!BitRow.isEmpty(reached, at(pieces - 1, met, made), row)) {
                    if (!moves) {
                        next.clear();
                        moves = true;
                    }
                    next.add(reached, at(pieces - 1, met, made), made);
                }
            }
            any |= moves && keep(pieces, met);
        }
        return any;
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
            long kept = next.at(from + word) & clear.at(where + word);
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
