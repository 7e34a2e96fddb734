package org.coursewright.estimate.ui.export;

import org.eclipse.osgi.util.NLS;

/** What is said about writing reports. */
final class ExportText extends NLS {

    public static String csvFiles;
    public static String job;
    public static String pdfFiles;
    public static String price;
    public static String scenarios;
    public static String takeoff;
    public static String unknownForm;
    public static String working;
    public static String writing;
    public static String written;
    public static String xlsxFiles;

    static {
        NLS.initializeMessages(ExportText.class.getPackageName() + ".messages", ExportText.class);
    }

    private ExportText() {
    }
}
