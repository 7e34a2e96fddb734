package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.coursewright.workbench.internal.preference.Appearance;
import org.coursewright.workbench.internal.preference.Preferences;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Light or dark, as somebody chooses, while the window is open. */
class LookTest {

    private static final int MIDDLE_GREY = 128;

    private final Window window = new Window();

    @TempDir
    private Path folder;

    @BeforeEach
    void openTheProject() throws Exception {
        window.open(SampleProject.in(folder));
        window.page().showView("org.coursewright.workbench.history");
        Widgets.settle();
    }

    @AfterEach
    void turnBack() {
        choose(Appearance.LIGHT);
        Preferences.ofWorkbench().store().setToDefault(Preferences.APPEARANCE);
        window.forgetEverything();
    }

    @Test
    void treesTablesAndFieldsTurnDarkAndLightAgain() throws Exception {
        choose(Appearance.LIGHT);
        assertTrue(brightness(window.tree()) > MIDDLE_GREY);

        choose(Appearance.DARK);
        assertEquals("org.coursewright.workbench.dark",
                PlatformUI.getWorkbench().getService(IThemeEngine.class).getActiveTheme().getId());
        assertReadableInTheDark(window.tree());
        assertReadableInTheDark(Widgets.find(window.shell(), Table.class));

        choose(Appearance.LIGHT);
        assertTrue(brightness(window.tree()) > MIDDLE_GREY);
    }

    private static void assertReadableInTheDark(Control control) {
        int ground = brightness(control);
        int ink = brightness(control.getForeground().getRGB());
        assertTrue(ground < MIDDLE_GREY && ink > MIDDLE_GREY, control + ": ground " + ground + ", ink " + ink);
    }

    private void choose(Appearance appearance) {
        Preferences.ofWorkbench().store().setValue(Preferences.APPEARANCE, appearance.name());
        Widgets.settle();
        window.shell().update();
        Widgets.settle();
    }

    private static int brightness(Control control) {
        return brightness(control.getBackground().getRGB());
    }

    /** As the eye weighs colours (ITU-R BT.601). */
    private static int brightness(RGB colour) {
        return (299 * colour.red + 587 * colour.green + 114 * colour.blue) / 1000;
    }
}
