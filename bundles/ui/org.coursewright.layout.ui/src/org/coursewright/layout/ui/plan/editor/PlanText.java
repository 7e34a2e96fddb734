package org.coursewright.layout.ui.plan.editor;

import org.eclipse.osgi.util.NLS;

/** What the plan editor says. */
final class PlanText extends NLS {

    public static String accessiblePlan;
    public static String deleted;
    public static String dimensions;
    public static String export;
    public static String exportTitle;
    public static String fit;
    public static String grid;
    public static String noStorey;
    public static String noUnderlay;
    public static String noWalls;
    public static String part;
    public static String several;
    public static String storey;
    public static String summary;
    public static String toolSelect;
    public static String toolWall;
    public static String toolDoor;
    public static String toolWindow;
    public static String print;
    public static String cannotPrint;
    public static String underlay;

    static {
        NLS.initializeMessages(PlanText.class.getPackageName() + ".messages", PlanText.class);
    }

    private PlanText() {
    }

    static String of(PlanTools.Kind kind) {
        return switch (kind) {
            case SELECT -> toolSelect;
            case WALL -> toolWall;
            case DOOR -> toolDoor;
            case WINDOW -> toolWindow;
        };
    }
}
