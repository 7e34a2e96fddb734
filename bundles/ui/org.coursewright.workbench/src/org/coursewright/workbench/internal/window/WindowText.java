package org.coursewright.workbench.internal.window;

import org.eclipse.osgi.util.NLS;

/** What the window itself says. */
final class WindowText extends NLS {

    public static String title;
    public static String menuEdit;
    public static String settingsInUse;
    public static String settingsUnusable;

    static {
        NLS.initializeMessages(WindowText.class.getPackageName() + ".messages", WindowText.class);
    }

    private WindowText() {
    }
}
