package org.coursewright.estimate.ui.part;

import org.eclipse.osgi.util.NLS;

/** What all parts of an estimate say. */
final class EstimateText extends NLS {

    public static String export;
    public static String mixes;
    public static String notAProject;
    public static String partName;
    public static String price;
    public static String scenarios;
    public static String takeoff;
    public static String working;

    static {
        NLS.initializeMessages(EstimateText.class.getPackageName() + ".messages", EstimateText.class);
    }

    private EstimateText() {
    }
}
