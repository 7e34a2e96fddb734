package org.coursewright.layout.ui.trial;

import org.eclipse.osgi.util.NLS;

/** What work in the background is called. */
final class TrialText extends NLS {

    public static String adviceJob;
    public static String dragJob;
    public static String effectJob;

    static {
        NLS.initializeMessages(TrialText.class.getPackageName() + ".messages", TrialText.class);
    }

    private TrialText() {
    }
}
