package org.coursewright.bond.internal;

/**
 * Pieces that fill a run with joints in range, in no order but for those under a rake.
 *
 * @param wholes number of whole units
 * @param specials number of each special, in the order of the masonry's specials
 * @param cuts lengths of the pieces cut to length, never under the shortest piece
 * @param rakeStart length of the piece cut along the rake at the start, 0 if none
 * @param rakeEnd the same at the end
 * @param joints number of joints
 * @param jointTotal width of all joints together
 */
record PieceSet(int wholes, int[] specials, long[] cuts, long rakeStart, long rakeEnd, int joints, long jointTotal) {

    int specialCount() {
        int count = 0;
        for (int special : specials) {
            count += special;
        }
        return count;
    }

    int pieces() {
        return wholes + specialCount() + cuts.length + (rakeStart > 0 ? 1 : 0) + (rakeEnd > 0 ? 1 : 0);
    }
}
