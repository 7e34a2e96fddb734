package org.coursewright.workbench.internal.history;

import org.eclipse.osgi.util.NLS;

/** What the history says. */
final class HistoryText extends NLS {

    public static String noProject;
    public static String opened;
    public static String saved;
    public static String present;
    public static String takenBack;
    public static String accessibleName;

    static {
        NLS.initializeMessages(HistoryText.class.getPackageName() + ".messages", HistoryText.class);
    }

    private HistoryText() {
    }
}
