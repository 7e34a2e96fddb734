package org.coursewright.workbench.internal.appearance;

import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.internal.preference.Appearance;
import org.eclipse.swt.widgets.Display;

/** What the workbench looks like at a moment. */
enum Look {
    /** Dark on light. */
    LIGHT,
    /** Light on dark. */
    DARK;

    /** The desktop's own look as it was before anything here changed it. */
    private static final boolean DESKTOP_IS_DARK = Display.isSystemDarkTheme();

    /** @return the look that a choice stands for on this desktop */
    static Look of(Appearance chosen) {
        return switch (chosen) {
            case LIGHT -> LIGHT;
            case DARK -> DARK;
            case AS_DESKTOP -> DESKTOP_IS_DARK ? DARK : LIGHT;
        };
    }

    /** @return id of the style sheet in plugin.xml */
    String themeId() {
        return WorkbenchIds.BUNDLE + (this == DARK ? ".dark" : ".light");
    }
}
