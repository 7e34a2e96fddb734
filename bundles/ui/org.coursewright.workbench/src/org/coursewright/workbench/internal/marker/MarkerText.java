package org.coursewright.workbench.internal.marker;

import org.eclipse.osgi.util.NLS;

/** What markers say beside the findings themselves. */
final class MarkerText extends NLS {

    public static String project;
    public static String notChecked;

    static {
        NLS.initializeMessages(MarkerText.class.getPackageName() + ".messages", MarkerText.class);
    }

    private MarkerText() {
    }
}
