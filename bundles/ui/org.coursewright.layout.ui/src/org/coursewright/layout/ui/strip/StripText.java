package org.coursewright.layout.ui.strip;

import org.eclipse.osgi.util.NLS;

/** What the strip under a wall says. */
final class StripText extends NLS {

    public static String atLeastThere;
    public static String cuts;
    public static String fewest;
    public static String fromStart;
    public static String goesOn;
    public static String here;
    public static String hereAtLeast;
    public static String hereShort;
    public static String hereUnfillable;
    public static String laidThere;
    public static String legend;
    public static String looking;
    public static String selectOpening;
    public static String title;
    public static String titleFarJamb;
    public static String titleNearJamb;
    public static String wide;

    static {
        NLS.initializeMessages(StripText.class.getPackageName() + ".messages", StripText.class);
    }

    private StripText() {
    }
}
