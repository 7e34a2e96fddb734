package org.coursewright.workbench.internal.window;

/** Where what is needed is ordered, delivered and counted. */
public final class SupplyingPerspective extends PerspectiveFrame {

    /** Called by the platform. */
    public SupplyingPerspective() {
        super("org.coursewright.supply.ui");
    }
}
