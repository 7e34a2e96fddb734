package org.coursewright.core.derive;

import org.coursewright.measure.Progress;

/** Of several results that are computed one after the other, only the last tells how far it is. */
record OnlyCancelling(Progress progress) implements Progress {

    @Override
    public void done(double fraction) {
        // the result that was asked for tells
    }

    @Override
    public boolean isCancelled() {
        return progress.isCancelled();
    }
}
