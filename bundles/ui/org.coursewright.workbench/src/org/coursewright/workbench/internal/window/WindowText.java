package org.coursewright.workbench.internal.window;

import org.eclipse.osgi.util.NLS;

/** What the window itself says. */
final class WindowText extends NLS {

    public static String title;
    public static String menuEdit;

    static {
        NLS.initializeMessages(WindowText.class.getPackageName() + ".messages", WindowText.class);
    }

    private WindowText() {
    }
}
