package org.coursewright.workbench.internal.navigator;

import org.eclipse.osgi.util.NLS;

/** What the navigator says. */
final class NavigatorText extends NLS {

    public static String accessibleName;
    public static String emptyHint;
    public static String openLink;
    public static String rename;
    public static String delete;
    public static String dismiss;

    static {
        NLS.initializeMessages(NavigatorText.class.getPackageName() + ".messages", NavigatorText.class);
    }

    private NavigatorText() {
    }
}
