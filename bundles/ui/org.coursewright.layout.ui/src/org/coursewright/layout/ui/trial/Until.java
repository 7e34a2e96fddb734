package org.coursewright.layout.ui.trial;

import java.util.function.BooleanSupplier;

import org.coursewright.measure.Progress;

/**
 * Cancels work once something holds.
 *
 * @param over whether the result is no longer wanted
 */
record Until(BooleanSupplier over) implements Progress {

    @Override
    public void done(double fraction) {
        // nobody shows how far it is
    }

    @Override
    public boolean isCancelled() {
        return over.getAsBoolean();
    }
}
