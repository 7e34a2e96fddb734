package org.coursewright.measure;

import java.util.function.BooleanSupplier;

/**
 * How a computation that takes longer than 200 ms tells how far it is and learns that it is no longer wanted.
 * Both methods are called often and return at once. {@link #done} is called by one thread at a time,
 * {@link #isCancelled} by any of those that compute.
 */
public interface Progress {

    /** Nobody listens and nobody cancels. */
    Progress NONE = until(() -> false);

    /**
     * Nobody listens, but the work may be cancelled.
     *
     * @param over whether the result is no longer wanted; may be asked by any thread
     * @return what computations ask
     */
    static Progress until(BooleanSupplier over) {
        return new Progress() {
            @Override
            public void done(double fraction) {
                // nobody listens
            }

            @Override
            public boolean isCancelled() {
                return over.getAsBoolean();
            }
        };
    }

    /**
     * Tells how far the work is.
     *
     * @param fraction share of the work done, 0 to 1, never falling
     */
    void done(double fraction);

    /** @return whether the result is no longer wanted */
    boolean isCancelled();

    /**
     * Ends the computation if its result is no longer wanted.
     *
     * @throws java.util.concurrent.CancellationException if it is not
     */
    default void checkCancelled() {
        if (isCancelled()) {
            throw new java.util.concurrent.CancellationException("No longer wanted.");
        }
    }
}
