package org.coursewright.workbench.internal.safety;

import org.eclipse.osgi.util.NLS;

/** What is said about work that is at risk. */
final class SafetyText extends NLS {

    public static String about;
    public static String replayed;
    public static String journalFailed;
    public static String notSaved;

    static {
        NLS.initializeMessages(SafetyText.class.getPackageName() + ".messages", SafetyText.class);
    }

    private SafetyText() {
    }
}
