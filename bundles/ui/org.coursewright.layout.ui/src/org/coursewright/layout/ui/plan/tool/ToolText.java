package org.coursewright.layout.ui.plan.tool;

import org.eclipse.osgi.util.NLS;

/** What tools of the plan say. */
final class ToolText extends NLS {

    public static String beginWall;
    public static String endWall;
    public static String noWallHere;
    public static String placeOpening;
    public static String typeLength;
    public static String wallLength;

    static {
        NLS.initializeMessages(ToolText.class.getPackageName() + ".messages", ToolText.class);
    }

    private ToolText() {
    }
}
