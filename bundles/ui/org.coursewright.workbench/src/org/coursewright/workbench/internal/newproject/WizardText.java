package org.coursewright.workbench.internal.newproject;

import org.eclipse.osgi.util.NLS;

/** What the wizard says. */
final class WizardText extends NLS {

    public static String windowTitle;
    public static String label;
    public static String browse;
    public static String browseFor;
    public static String schedulesTitle;
    public static String schedulesDescription;
    public static String walls;
    public static String openings;
    public static String units;
    public static String bareNumbers;
    public static String inches;
    public static String millimetres;
    public static String noSuchFile;
    public static String projectTitle;
    public static String projectDescription;
    public static String name;
    public static String file;
    public static String rule;
    public static String ruleHint;
    public static String noSuchFolder;
    public static String replaces;
    public static String reading;
    public static String refused;
    public static String whatIsWrong;

    static {
        NLS.initializeMessages(WizardText.class.getPackageName() + ".messages", WizardText.class);
    }

    private WizardText() {
    }
}
