package org.coursewright.bond.internal.proof;

/** Proves how many cuts a wall needs, when it is asked to. */
public interface Prover {

    /** A bound that does for most walls. */
    CutProof prove();

    /**
     * A better bound if there is one, which takes longer.
     *
     * @param wanted cuts of a layout at hand; a bound that reaches them is good enough
     */
    CutProof refine(int wanted);

    /** The bound again, with other choices that it may rest on. */
    CutProof vary();
}
