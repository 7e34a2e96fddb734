package org.coursewright.workbench.internal.appearance;

import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.internal.preference.Appearance;
import org.eclipse.jface.preference.JFacePreferences;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

/** What the workbench looks like at a moment. */
enum Look {
    /** Dark on light. */
    LIGHT(new RGB(107, 101, 92), new RGB(0, 92, 175)),
    /** Light on dark. */
    DARK(new RGB(171, 166, 157), new RGB(143, 195, 245));

    private final RGB addition;
    private final RGB link;

    /**
     * @param addition ink of what is added to a name
     * @param link ink of links in text
     */
    Look(RGB addition, RGB link) {
        this.addition = addition;
        this.link = link;
    }

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

    /** Gives the toolkit's viewers the inks that neither style sheets nor native widgets know. */
    void giveInks() {
        JFaceResources.getColorRegistry().put(JFacePreferences.QUALIFIER_COLOR, addition);
        JFaceResources.getColorRegistry().put(JFacePreferences.HYPERLINK_COLOR, link);
        JFaceResources.getColorRegistry().put(JFacePreferences.ACTIVE_HYPERLINK_COLOR, link);
    }

    /** @return id of the style sheet in plugin.xml */
    String themeId() {
        return WorkbenchIds.BUNDLE + (this == DARK ? ".dark" : ".light");
    }
}
