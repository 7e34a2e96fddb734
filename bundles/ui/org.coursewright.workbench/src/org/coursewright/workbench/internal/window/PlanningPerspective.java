package org.coursewright.workbench.internal.window;

/** Where walls and openings are drawn and their blocks seen. */
public final class PlanningPerspective extends PerspectiveFrame {

    /** Called by the platform. */
    public PlanningPerspective() {
        super("org.coursewright.layout.ui");
    }
}
