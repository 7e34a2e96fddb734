package org.coursewright.workbench.internal.preference;

import org.eclipse.osgi.util.NLS;

/** What the page of preferences says. */
final class PreferenceText extends NLS {

    public static String newProjectsIn;
    public static String inches;
    public static String millimetres;
    public static String appearance;
    public static String asDesktop;
    public static String light;
    public static String dark;
    public static String autosave;
    public static String autosaveMinutes;
    public static String minutesRange;

    static {
        NLS.initializeMessages(PreferenceText.class.getPackageName() + ".messages", PreferenceText.class);
    }

    private PreferenceText() {
    }
}
