package org.coursewright.bond.internal.refit;

import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.run.RunSpan;

/**
 * A run with what has been found of its shape.
 *
 * @param span where it lies
 * @param form what has been found of runs of its shape
 */
record ShapedRun(RunSpan span, RefitShape form) {

    RunShape shape() {
        return form.shape();
    }

    /** Whether joints of a run of the next course may lap too little with joints of this one. */
    boolean meets(ShapedRun above, long lap) {
        return span.from() < above.span.to() + lap && above.span.from() < span.to() + lap;
    }

    /** Where another run begins, measured from the start of this one. */
    long offsetOf(ShapedRun other) {
        return other.span.from() - span.from();
    }

    /** Whether it ends at the same as another that is longer or shorter, both level. */
    boolean isAlike(ShapedRun other) {
        return span.start() == other.span.start() && span.end() == other.span.end() && !shape().isRaked()
                && !other.shape().isRaked();
    }
}
