package org.coursewright.workbench.internal.navigator;

import org.eclipse.osgi.util.NLS;

/** What the navigator says. */
final class NavigatorText extends NLS {

    static String emptyHint;
    static String openLink;

    static {
        NLS.initializeMessages(NavigatorText.class.getPackageName() + ".messages", NavigatorText.class);
    }

    private NavigatorText() {
    }
}
