package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.Collectors;

import org.coursewright.workbench.internal.preference.Preferences;
import org.eclipse.jface.preference.PreferenceDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class PreferencesTest {

    private static final String PAGE = "org.coursewright.workbench.preferences";

    private PreferenceDialog preferences;
    private Shell dialog;

    @AfterEach
    void leaveTheDefaults() {
        Preferences.ofWorkbench().store().setToDefault(Preferences.AUTOSAVE);
        Preferences.ofWorkbench().store().setToDefault(Preferences.AUTOSAVE_MINUTES);
        Preferences.ofWorkbench().store().setToDefault(Preferences.NEW_PROJECTS_IN);
        if (preferences != null) {
            preferences.close();
        }
    }

    @Test
    void savingByItselfIsOffUntilSomebodyWantsIt() {
        assertTrue(Preferences.ofWorkbench().autosaveMinutes().isEmpty());
    }

    @Test
    void whatIsChosenOnThePageHolds() {
        open();
        check("Save projects by themselves", true);
        type("3");
        check("Feet and inches", false);
        check("Millimetres", true);
        press("Apply and Close");

        assertEquals(3, Preferences.ofWorkbench().autosaveMinutes().orElseThrow());
        assertEquals("mm", Preferences.ofWorkbench().newProjectsIn().symbol());
    }

    @Test
    void minutesOutOfRangeAreRefusedWithTheRange() {
        open();
        check("Save projects by themselves", true);
        type("0");

        assertTrue(texts().contains("Enter from 1 to 120 minutes."), this::texts);
    }

    @Test
    void minutesAreAskedForOnlyIfProjectsSaveThemselves() {
        open();
        assertFalse(minutes().isEnabled());

        check("Save projects by themselves", true);

        assertTrue(minutes().isEnabled());
    }

    @Test
    void keysAreListedOnAPageOfTheirOwn() {
        open();
        Tree pages = Widgets.find(dialog, Tree.class);

        assertEquals("Coursewright, Keys",
                Arrays.stream(pages.getItems()).map(TreeItem::getText).collect(Collectors.joining(", ")));
    }

    private void open() {
        preferences = PreferencesUtil.createPreferenceDialogOn(new Window().shell(), PAGE, null, null);
        preferences.setBlockOnOpen(false);
        preferences.open();
        dialog = preferences.getShell();
        Widgets.settle();
    }

    private void type(String minutes) {
        Text field = minutes();
        field.setText(minutes);
        field.notifyListeners(SWT.KeyUp, new Event());
        Widgets.settle();
    }

    private Text minutes() {
        return Widgets.find(dialog, Text.class, text -> text.getText().equals("10"));
    }

    private void check(String label, boolean on) {
        Button button = button(label);
        button.setSelection(on);
        Widgets.select(button);
    }

    private void press(String label) {
        Widgets.select(button(label));
    }

    private Button button(String label) {
        return Widgets.find(dialog, Button.class, each -> each.getText().replace("&", "").equals(label));
    }

    private String texts() {
        return Widgets.in(dialog).map(PreferencesTest::text).collect(Collectors.joining("\n"));
    }

    private static String text(Control control) {
        if (control instanceof CLabel label) {
            return label.getText();
        }
        return control instanceof Text text ? text.getText() : Widgets.textOf(control);
    }
}
