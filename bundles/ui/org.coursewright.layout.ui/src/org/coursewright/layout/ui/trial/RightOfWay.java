package org.coursewright.layout.ui.trial;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

import org.coursewright.measure.Progress;

/** Lets what somebody waits for with the mouse in the hand go before other work on the same wall. */
public final class RightOfWay {

    private static final long LOOK_AGAIN = TimeUnit.MILLISECONDS.toNanos(3);

    private volatile boolean taken;

    /** Other work waits from now on. */
    void take() {
        taken = true;
    }

    /** Other work goes on. */
    void leave() {
        taken = false;
    }

    /** Progress of work that gives way wherever it asks whether it is still wanted. */
    Progress giving(Progress progress) {
        return Progress.until(() -> {
            while (taken && !progress.isCancelled()) {
                LockSupport.parkNanos(LOOK_AGAIN);
            }
            return progress.isCancelled();
        });
    }
}
