package org.coursewright.bond.internal.run;

import java.util.ArrayList;
import java.util.List;

/**
 * Pieces that fill a level run with joints in range, in no order.
 *
 * @param wholes number of whole units
 * @param specials number of each special, in the order of the masonry's specials
 * @param cuts lengths of the pieces cut to length, never under the shortest piece
 * @param joints number of joints
 * @param jointTotal width of all joints together
 */
public record PieceSet(int wholes, int[] specials, long[] cuts, int joints, long jointTotal) {

    /** Number of specials of all lengths. */
    public int specialCount() {
        int count = 0;
        for (int special : specials) {
            count += special;
        }
        return count;
    }

    /** Number of all pieces. */
    public int pieces() {
        return wholes + specialCount() + cuts.length;
    }

    /** How many ways there are, at most, to have used some of the pieces. */
    public long states() {
        long states = wholes + 1L;
        for (int special : specials) {
            states = Math.min(Integer.MAX_VALUE, states * (special + 1));
        }
        return Math.min(Integer.MAX_VALUE, states << Math.min(cuts.length, Integer.SIZE - 2));
    }

    /** What sets have in common that differ only in the lengths of their cut pieces: they have alike orders. */
    public List<Integer> makeUp() {
        List<Integer> makeUp = new ArrayList<>();
        makeUp.add(wholes);
        for (int special : specials) {
            makeUp.add(special);
        }
        for (int cut = 1; cut <= cuts.length; cut++) {
            makeUp.add(cut < cuts.length && cuts[cut] == cuts[cut - 1] ? 1 : 0);
        }
        return makeUp;
    }
}
