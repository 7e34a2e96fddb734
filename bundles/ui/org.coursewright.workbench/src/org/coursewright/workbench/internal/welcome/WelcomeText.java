package org.coursewright.workbench.internal.welcome;

import org.eclipse.osgi.util.NLS;

/** What the welcome page says. */
final class WelcomeText extends NLS {

    public static String title;
    public static String heading;
    public static String demo;
    public static String demoDescription;
    public static String newProject;
    public static String newProjectDescription;
    public static String open;
    public static String openDescription;
    public static String help;
    public static String helpDescription;
    public static String caution;
    public static String noDemo;

    static {
        NLS.initializeMessages(WelcomeText.class.getPackageName() + ".messages", WelcomeText.class);
    }

    private WelcomeText() {
    }
}
