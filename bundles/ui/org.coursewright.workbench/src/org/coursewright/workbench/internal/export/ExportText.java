package org.coursewright.workbench.internal.export;

import org.eclipse.osgi.util.NLS;

/** What is said about writing files. */
final class ExportText extends NLS {

    public static String lay;
    public static String takeoff;
    public static String sheets;
    public static String job;
    public static String written;
    public static String cancelled;
    public static String cannotWrite;

    static {
        NLS.initializeMessages(ExportText.class.getPackageName() + ".messages", ExportText.class);
    }

    private ExportText() {
    }
}
