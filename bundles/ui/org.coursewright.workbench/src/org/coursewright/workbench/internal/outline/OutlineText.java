package org.coursewright.workbench.internal.outline;

import org.eclipse.osgi.util.NLS;

/** What the outline says. */
final class OutlineText extends NLS {

    public static String accessibleName;

    static {
        NLS.initializeMessages(OutlineText.class.getPackageName() + ".messages", OutlineText.class);
    }

    private OutlineText() {
    }
}
