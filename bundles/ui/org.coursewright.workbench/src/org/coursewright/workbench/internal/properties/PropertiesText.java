package org.coursewright.workbench.internal.properties;

import org.eclipse.osgi.util.NLS;

/** What the properties view says. */
final class PropertiesText extends NLS {

    public static String nothingSelected;
    public static String severalSelected;
    public static String label;
    public static String labelWithUnit;

    static {
        NLS.initializeMessages(PropertiesText.class.getPackageName() + ".messages", PropertiesText.class);
    }

    private PropertiesText() {
    }
}
