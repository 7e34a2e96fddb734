package org.coursewright.help.view;

import org.eclipse.osgi.util.NLS;

/** What the view says beside the pages. */
final class HelpText extends NLS {

    public static String accessibleName;
    public static String back;
    public static String home;
    public static String noSuchPage;

    static {
        NLS.initializeMessages(HelpText.class.getPackageName() + ".messages", HelpText.class);
    }

    private HelpText() {
    }
}
