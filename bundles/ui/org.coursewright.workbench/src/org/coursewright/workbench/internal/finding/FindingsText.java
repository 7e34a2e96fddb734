package org.coursewright.workbench.internal.finding;

import org.eclipse.osgi.util.NLS;

/** What the findings view says. */
final class FindingsText extends NLS {

    public static String element;
    public static String finding;
    public static String project;
    public static String noProject;
    public static String checking;
    public static String current;
    public static String checkingAgain;
    public static String nothingFound;
    public static String counts;
    public static String accessibleName;

    static {
        NLS.initializeMessages(FindingsText.class.getPackageName() + ".messages", FindingsText.class);
    }

    private FindingsText() {
    }
}
