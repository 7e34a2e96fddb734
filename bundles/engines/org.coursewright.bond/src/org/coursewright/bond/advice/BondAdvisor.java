package org.coursewright.bond.advice;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.advice.internal.StandardBondAdvisor;
import org.coursewright.measure.Progress;

/** Finds small changes of dimensions that spare cuts. */
public interface BondAdvisor {

    /**
     * The advisor of this engine: exact lengths, deterministic, without state.
     *
     * @return that advisor
     */
    static BondAdvisor standard() {
        return new StandardBondAdvisor();
    }

    /**
     * An advisor on buildings that a solver lays: walls that {@link BondSolver#remembering it remembers} are not laid again.
     * Its advice is the same as that of {@link #standard()}. Safe for use from several threads.
     *
     * @param solver that lays the building as planned, not null
     * @return that advisor
     */
    static BondAdvisor of(BondSolver solver) {
        return new StandardBondAdvisor(solver);
    }

    /**
     * Looks at every dimension that may change and chooses a set of changes.
     *
     * @param request the building and what may change, not null
     * @param progress hears how far the work is and may cancel it, not null
     * @return the advice; what it promises has been laid
     * @throws org.coursewright.bond.InvalidBondRequestException if the building contradicts itself or does not have what
     *         is to change
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    Advice advise(AdviceRequest request, Progress progress);

    /**
     * Looks at one dimension in a hurry: nothing is laid, the layout at hand is fitted to every value.
     *
     * @param request the building, how it is laid and the dimension, not null
     * @param progress may cancel it, not null
     * @return what is known of every value; the value as planned is called laid if the layout is of the wall as planned
     * @throws org.coursewright.bond.InvalidBondRequestException if the building contradicts itself or does not have what
     *         is to change
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    DimensionProfile profile(ProfileRequest request, Progress progress);
}
