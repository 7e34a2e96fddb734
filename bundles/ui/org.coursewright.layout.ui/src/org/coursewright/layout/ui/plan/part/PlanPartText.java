package org.coursewright.layout.ui.plan.part;

import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.eclipse.osgi.util.NLS;

/** What is written on a plan, or spoken of it. */
final class PlanPartText extends NLS {

    public static String beyondTheWall;
    public static String clear;
    public static String dragged;
    public static String fromJamb;
    public static String moved;
    public static String opening;
    public static String overall;
    public static String toJamb;
    public static String cornerAtEnd;
    public static String cornerAtStart;
    public static String wall;
    public static String width;

    static {
        NLS.initializeMessages(PlanPartText.class.getPackageName() + ".messages", PlanPartText.class);
    }

    private PlanPartText() {
    }

    static String of(Dimension.Kind kind) {
        return switch (kind) {
            case OVERALL -> overall;
            case CLEAR -> clear;
            case TO_JAMB -> toJamb;
            case WIDTH -> width;
            case FROM_JAMB -> fromJamb;
        };
    }
}
