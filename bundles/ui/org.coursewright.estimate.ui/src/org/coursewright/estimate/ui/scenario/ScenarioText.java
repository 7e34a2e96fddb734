package org.coursewright.estimate.ui.scenario;

import org.eclipse.osgi.util.NLS;

/** What the comparison of scenarios says. */
final class ScenarioText extends NLS {

    public static String accessibleChart;
    public static String accessibleTable;
    public static String coming;
    public static String difference;
    public static String differencePercent;
    public static String headline;
    public static String headlineNone;
    public static String incomplete;
    public static String newAdd;
    public static String newBond;
    public static String newLaidOf;
    public static String newMark;
    public static String newMessage;
    public static String newNote;
    public static String newSame;
    public static String newSameUnits;
    public static String newScenario;
    public static String newSource;
    public static String newSpecials;
    public static String newTitle;
    public static String newUnits;
    public static String newWalls;
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
