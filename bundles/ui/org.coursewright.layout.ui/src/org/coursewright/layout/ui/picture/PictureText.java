package org.coursewright.layout.ui.picture;

import org.eclipse.osgi.util.NLS;

/** What is said when a picture is exported. */
final class PictureText extends NLS {

    public static String cannotExport;
    public static String pngFiles;
    public static String svgFiles;

    static {
        NLS.initializeMessages(PictureText.class.getPackageName() + ".messages", PictureText.class);
    }

    private PictureText() {
    }
}
