package org.coursewright.layout.ui.plan.shape;

/**
 * Where the long faces of a wall stop at one of its ends, seen as one looks from its start to its end.
 *
 * @param left end of the face on the left hand
 * @param right end of the face on the right hand
 * @param open whether nothing is met there, so that the end is a face itself
 */
record EndCut(PlanPoint left, PlanPoint right, boolean open) {

    /** @return the same, seen as one looks the other way */
    EndCut turned() {
        return new EndCut(right, left, open);
    }
}
