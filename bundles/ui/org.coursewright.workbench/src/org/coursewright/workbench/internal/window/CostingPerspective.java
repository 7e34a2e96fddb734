package org.coursewright.workbench.internal.window;

/** Where quantities are taken off and priced. */
public final class CostingPerspective extends PerspectiveFrame {

    /** Called by the platform. */
    public CostingPerspective() {
        super("org.coursewright.estimate.ui");
    }
}
