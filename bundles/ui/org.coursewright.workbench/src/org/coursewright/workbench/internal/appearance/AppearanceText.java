package org.coursewright.workbench.internal.appearance;

import org.eclipse.osgi.util.NLS;

/** What is written to the log about looks. */
final class AppearanceText extends NLS {

    public static String nativeLookFailed;

    static {
        NLS.initializeMessages(AppearanceText.class.getPackageName() + ".messages", AppearanceText.class);
    }

    private AppearanceText() {
    }
}
