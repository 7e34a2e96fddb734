package org.coursewright.bond.internal.run;

import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;

import org.coursewright.bond.Piece;
import org.coursewright.bond.internal.choice.WallCost;

/**
 * One way to fill a run: pieces in order and equal joints. Positions are relative to the run's start and multiplied by
 * the number of joints, so that they are whole numbers.
 */
public final class Pattern {

    private static final int ROUGH = 12;
    /** Further bits of a joint, so that many of them add up to less than one on the rough scale. */
    private static final int FINE = 20;

    private final long[] pieces;
    private final Piece.Kind[] kinds;
    private final int joints;
    private final long jointTotal;
    private final long[] jointStarts;
    private final long[] roughStarts;
    private final long[] roughEnds;
    private final int cuts;
    private final int preference;
    private final int hash;

    /** @param pieces lengths in order; @param kinds where they come from, those under a rake marked as cut */
    public Pattern(RunShape shape, Masonry masonry, long[] pieces, Piece.Kind[] kinds, long jointTotal) {
        this.pieces = pieces;
        this.kinds = kinds;
        this.joints = pieces.length - 1 + shape.startJoints() + shape.endJoints();
        this.jointTotal = jointTotal;
        jointStarts = new long[joints];
        roughStarts = new long[joints];
        roughEnds = new long[joints];
        place(shape.startJoints());
        int cutCount = 0;
        for (Piece.Kind kind : kinds) {
            cutCount += kind == Piece.Kind.CUT ? 1 : 0;
        }
        this.cuts = cutCount;
        this.preference = Preference.of(masonry, pieces, kinds, joints, jointTotal);
        hash = 31 * Arrays.hashCode(pieces) + Long.hashCode(jointTotal);
    }

    private void place(int startJoints) {
        long fine = joints == 0 ? 0 : (jointTotal << ROUGH + FINE) / joints;
        long before = 0;
        int piece = 0;
        for (int joint = 0; joint < joints; joint++) {
            if (joint >= startJoints) {
                before += pieces[piece++];
            }
            jointStarts[joint] = before * joints + joint * jointTotal;
            roughStarts[joint] = rough(before) + (joint * fine >> FINE);
            roughEnds[joint] = rough(before) + ((joint + 1) * fine >> FINE);
        }
    }

    /** The same pieces from the other end. */
    public Pattern turned(RunShape shape, Masonry masonry) {
        long[] turned = new long[pieces.length];
        Piece.Kind[] turnedKinds = new Piece.Kind[pieces.length];
        for (int piece = 0; piece < pieces.length; piece++) {
            turned[pieces.length - 1 - piece] = pieces[piece];
            turnedKinds[pieces.length - 1 - piece] = kinds[piece];
        }
        return new Pattern(shape, masonry, turned, turnedKinds, jointTotal);
    }

    /** Lengths of the pieces in order, in 1/320 mm; not to be changed. */
    public long[] pieces() {
        return pieces;
    }

    /** Where the pieces come from, in order; not to be changed. */
    public Piece.Kind[] kinds() {
        return kinds;
    }

    /** Number of joints. */
    public int joints() {
        return joints;
    }

    /** Width of all joints together: each joint times their number. */
    public long jointTotal() {
        return jointTotal;
    }

    /** Where joint {@code index} begins, times the number of joints. */
    public long jointStart(int index) {
        return jointStarts[index];
    }

    /** A length on the scale of rough positions. */
    public static long rough(long length) {
        return length << ROUGH;
    }

    /** Where joint {@code index} begins, on the scale of {@link #rough}, or up to two less. */
    public long roughStart(int index) {
        return roughStarts[index];
    }

    /** Where joint {@code index} ends, on the scale of {@link #rough}, or up to two less. */
    public long roughEnd(int index) {
        return roughEnds[index];
    }

    /** Whether that piece is cut to length. */
    public boolean isCut(int piece) {
        return kinds[piece] == Piece.Kind.CUT;
    }

    /** Whether it has the other's joints, and the same cut pieces one after the other, wherever they lie. */
    public boolean isCutAs(Pattern other) {
        boolean alike = joints == other.joints && jointTotal == other.jointTotal && cuts == other.cuts;
        int beside = 0;
        for (int piece = 0; piece < pieces.length && alike; piece++) {
            if (isCut(piece)) {
                while (!other.isCut(beside)) {
                    beside++;
                }
                alike = pieces[piece] == other.pieces[beside++];
            }
        }
        return alike;
    }

    /** The lengths of cut pieces, each once. */
    public Set<Long> cutLengths() {
        Set<Long> lengths = new TreeSet<>();
        for (int piece = 0; piece < pieces.length; piece++) {
            if (isCut(piece)) {
                lengths.add(pieces[piece]);
            }
        }
        return lengths;
    }

    /** Number of pieces cut to length. */
    public int cuts() {
        return cuts;
    }

    /** What decides between patterns with equally many cuts: less is better. */
    int preference() {
        return preference;
    }

    /** Cuts and preference as one cost for a {@link WallCost}. */
    public long cost() {
        return WallCost.of(0, cuts, preference);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pattern pattern && hash == pattern.hash && jointTotal == pattern.jointTotal
                && Arrays.equals(pieces, pattern.pieces) && Arrays.equals(kinds, pattern.kinds);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
