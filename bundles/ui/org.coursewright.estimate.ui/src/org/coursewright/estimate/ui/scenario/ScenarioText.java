package org.coursewright.estimate.ui.scenario;

import org.eclipse.osgi.util.NLS;

/** What the comparison of scenarios says. */
final class ScenarioText extends NLS {

    public static String accessibleChart;
    public static String accessibleTable;
    public static String difference;
    public static String differencePercent;
    public static String headline;
    public static String headlineNone;
    public static String incomplete;
    public static String none;
    public static String notYet;
    public static String percentile;
    public static String rangeNote;
    public static String selected;
    public static String total;

    static {
        NLS.initializeMessages(ScenarioText.class.getPackageName() + ".messages", ScenarioText.class);
    }

    private ScenarioText() {
    }
}
