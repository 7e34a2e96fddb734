package org.coursewright.workbench.internal.export;

import org.coursewright.measure.Progress;
import org.eclipse.core.runtime.IProgressMonitor;

/** Shows in the window how far a command is, and cancels it from there. */
final class MonitoredProgress implements Progress {

    private static final int STEPS = 1000;

    private final IProgressMonitor monitor;
    private int worked;

    /**
     * @param monitor of a job, not begun yet
     * @param task what is done
     */
    MonitoredProgress(IProgressMonitor monitor, String task) {
        this.monitor = monitor;
        monitor.beginTask(task, STEPS);
    }

    @Override
    public synchronized void done(double fraction) {
        int now = (int) (fraction * STEPS);
        if (now > worked) {
            monitor.worked(now - worked);
            worked = now;
        }
    }

    @Override
    public boolean isCancelled() {
        return monitor.isCanceled();
    }
}
