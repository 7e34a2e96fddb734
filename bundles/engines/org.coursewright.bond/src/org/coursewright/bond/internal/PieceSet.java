package org.coursewright.bond.internal;

/**
 * Pieces that fill a level run with joints in range, in no order.
 *
 * @param wholes number of whole units
 * @param specials number of each special, in the order of the masonry's specials
 * @param cuts lengths of the pieces cut to length, never under the shortest piece
 * @param joints number of joints
 * @param jointTotal width of all joints together
 */
record PieceSet(int wholes, int[] specials, long[] cuts, int joints, long jointTotal) {

    int specialCount() {
        int count = 0;
        for (int special : specials) {
            count += special;
        }
        return count;
    }

    int pieces() {
        return wholes + specialCount() + cuts.length;
    }
}
