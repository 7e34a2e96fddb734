package org.coursewright.core.derive;

import org.coursewright.measure.Progress;

/**
 * How a derived result follows from its inputs.
 *
 * @param <T> type of the result
 */
@FunctionalInterface
public interface Computation<T> {

    /**
     * Called on any thread, possibly several times at once. The same inputs give the same result.
     *
     * @param inputs the values of the sources that were declared, and of no others
     * @param progress asked often whether the result is still wanted
     * @return the result, immutable, not null
     * @throws java.util.concurrent.CancellationException if it is no longer wanted
     * @throws RuntimeException if there is no result; its message is the reason that people are shown
     */
    T compute(Inputs inputs, Progress progress);
}
