package org.coursewright.workbench.internal.window;

/** Where work is put in order of time, with the weather. */
public final class TimingPerspective extends PerspectiveFrame {

    /** Called by the platform. */
    public TimingPerspective() {
        super("org.coursewright.season.ui");
    }
}
