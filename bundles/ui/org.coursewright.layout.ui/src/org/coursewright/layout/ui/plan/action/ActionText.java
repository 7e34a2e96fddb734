package org.coursewright.layout.ui.plan.action;

import org.eclipse.osgi.util.NLS;

/** What actions of the plan are called. */
final class ActionText extends NLS {

    public static String alignCentre;
    public static String alignLower;
    public static String alignUpper;
    public static String copy;
    public static String mirrorSideways;
    public static String mirrorUpDown;

    static {
        NLS.initializeMessages(ActionText.class.getPackageName() + ".messages", ActionText.class);
    }

    private ActionText() {
    }
}
