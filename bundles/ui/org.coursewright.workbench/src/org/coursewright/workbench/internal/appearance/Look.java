package org.coursewright.workbench.internal.appearance;

import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.internal.preference.Appearance;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.JFacePreferences;
import org.eclipse.jface.resource.StringConverter;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

/** What the workbench looks like at a moment. */
enum Look {
    /** Dark on light. */
    LIGHT(new RGB(107, 101, 92), new RGB(0, 92, 175)),
    /** Light on dark. */
    DARK(new RGB(171, 166, 157), new RGB(143, 195, 245));

    private static final String COLOURS = "org.eclipse.ui.workbench";

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

    /**
     * Gives viewers the inks that neither style sheets nor native widgets know, as the platform's own settings of colours:
     * what is put into its register of colours directly is overwritten at the next change of style.
     */
    void giveInks() {
        IEclipsePreferences colours = InstanceScope.INSTANCE.getNode(COLOURS);
        colours.put(JFacePreferences.QUALIFIER_COLOR, StringConverter.asString(addition));
        colours.put(JFacePreferences.HYPERLINK_COLOR, StringConverter.asString(link));
        colours.put(JFacePreferences.ACTIVE_HYPERLINK_COLOR, StringConverter.asString(link));
    }

    /** @return id of the style sheet in plugin.xml */
    String themeId() {
        return WorkbenchIds.BUNDLE + (this == DARK ? ".dark" : ".light");
    }
}
