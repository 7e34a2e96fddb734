package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The guide is read in the window. */
class HelpTest {

    private static final String VIEW = "org.coursewright.help.pages";

    private final Window window = new Window();

    @BeforeEach
    void showHelp() throws Exception {
        window.execute("org.coursewright.help.show", Map.of());
        Widgets.settle();
    }

    @AfterEach
    void hideHelp() {
        window.page().hideView(window.page().findView(VIEW));
    }

    @Test
    void guideBeginsWithItsListOfPages() {
        assertTrue(page().getText().startsWith("Guide\n"), page()::getText);
    }

    @Test
    void linkLeadsToItsPageAndBackComesBack() {
        click("Words of the trade");
        assertTrue(page().getText().startsWith("Glossary\n"), page()::getText);
        assertFalse(page().getText().contains("| --- |"));

        window.press(VIEW, "Back");
        assertTrue(page().getText().startsWith("Guide\n"));
    }

    @Test
    void backspaceComesBackAndStaysAtTheFirstPage() {
        click("Words of the trade");
        for (int i = 0; i < 2; i++) {
            Event key = new Event();
            key.keyCode = SWT.BS;
            page().notifyListeners(SWT.KeyDown, key);
            Widgets.settle();
            assertTrue(page().getText().startsWith("Guide\n"));
        }
    }

    @Test
    void everyPageOfTheListIsThere() {
        for (String line : page().getText().lines().filter(each -> each.contains("\u2022")).toList()) {
            String words = line.replaceFirst(".*?\u2022\\s*", "").replaceFirst("[:,].*", "")
                    .replaceFirst("( that| without).*", "");
            click(words);
            assertFalse(page().getText().startsWith("There is no page"), words + ": " + page().getText());
            assertFalse(page().getText().startsWith("Guide\n"), "no link: " + words);
            window.press(VIEW, "All pages");
        }
        assertEquals("Help", window.page().findView(VIEW).getTitle());
    }

    private StyledText page() {
        return Widgets.find(window.shell(), StyledText.class);
    }

    private void click(String words) {
        int offset = page().getText().indexOf(words);
        assertTrue(offset >= 0, words);
        page().setTopIndex(page().getLineAtOffset(offset));
        Point place = page().getLocationAtOffset(offset + 1);
        Event click = new Event();
        click.x = place.x + 1;
        click.y = place.y + 4;
        page().notifyListeners(SWT.MouseUp, click);
        Widgets.settle();
    }
}
