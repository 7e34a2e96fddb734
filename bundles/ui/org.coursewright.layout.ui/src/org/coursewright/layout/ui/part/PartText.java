package org.coursewright.layout.ui.part;

import org.eclipse.osgi.util.NLS;

/** What is written on a wall face. */
final class PartText extends NLS {

    public static String cutsThere;
    public static String notThere;
    public static String openingLabel;
    public static String openingDragged;

    static {
        NLS.initializeMessages(PartText.class.getPackageName() + ".messages", PartText.class);
    }

    private PartText() {
    }
}
