package org.coursewright.estimate.ui.export;

import org.coursewright.measure.Progress;
import org.eclipse.core.runtime.IProgressMonitor;

/** Shows on the platform's monitor how far a computation is, and hands its cancel button on. */
final class MonitorProgress implements Progress {

    /** What all of it counts on the monitor. */
    static final int ALL = 1000;

    private final IProgressMonitor monitor;
    private int shown;

    MonitorProgress(IProgressMonitor monitor) {
        this.monitor = monitor;
    }

    @Override
    public synchronized void done(double fraction) {
        int reached = (int) Math.round(Math.min(1, fraction) * ALL);
        if (reached > shown) {
            monitor.worked(reached - shown);
            shown = reached;
        }
    }

    @Override
    public boolean isCancelled() {
        return monitor.isCanceled();
    }
}
