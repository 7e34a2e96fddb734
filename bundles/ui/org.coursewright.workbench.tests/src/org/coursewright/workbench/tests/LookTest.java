package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.coursewright.workbench.internal.preference.Appearance;
import org.coursewright.workbench.internal.preference.Preferences;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
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

    @Test
    void whatCannotBeDoneStandsBackOnDarkGround() {
        choose(Appearance.DARK);
        List<ToolItem> off = Widgets.in(window.shell()).filter(ToolBar.class::isInstance)
                .flatMap(bar -> Arrays.stream(((ToolBar) bar).getItems()))
                .filter(item -> item.getImage() != null && !item.isEnabled()).toList();
        assertTrue(off.size() >= 3, () -> "save, undo and redo of " + off);
        for (ToolItem item : off) {
            int ground = brightness(item.getParent());
            assertTrue(2 * contrast(item.getDisabledImage(), ground) < contrast(item.getImage(), ground),
                    item::getToolTipText);
        }
    }

    /** How much all pixels of an image together differ from the ground. */
    private static long contrast(Image image, int ground) {
        ImageData data = image.getImageData();
        long sum = 0;
        for (int x = 0; x < data.width; x++) {
            for (int y = 0; y < data.height; y++) {
                RGB colour = data.palette.getRGB(data.getPixel(x, y));
                sum += (long) data.getAlpha(x, y) * Math.abs(brightness(colour) - ground);
            }
        }
        return sum;
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
