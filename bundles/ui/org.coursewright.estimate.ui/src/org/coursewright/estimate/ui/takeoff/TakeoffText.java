package org.coursewright.estimate.ui.takeoff;

import org.eclipse.osgi.util.NLS;

/** What the take-off table says. */
final class TakeoffText extends NLS {

    public static String accessibleFrom;
    public static String accessibleInputs;
    public static String accessibleTable;
    public static String also;
    public static String andCourses;
    public static String byElement;
    public static String byItem;
    public static String byKind;
    public static String courses;
    public static String element;
    public static String everyKind;
    public static String filter;
    public static String formula;
    public static String from;
    public static String group;
    public static String headline;
    public static String headlineFindings;
    public static String input;
    public static String item;
    public static String kind;
    public static String none;
    public static String notYet;
    public static String ofCourses;
    public static String oneCourse;
    public static String quantity;
    public static String search;
    public static String searchHint;
    public static String showInWall;
    public static String showMe;
    public static String shown;
    public static String source;
    public static String total;
    public static String unit;
    public static String value;

    static {
        NLS.initializeMessages(TakeoffText.class.getPackageName() + ".messages", TakeoffText.class);
    }

    private TakeoffText() {
    }
}
