package org.coursewright.workbench.internal.preference;

import org.coursewright.measure.DisplayUnit;
import org.eclipse.jface.preference.BooleanFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.IntegerFieldEditor;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.jface.util.PropertyChangeEvent;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;

/** Where a person chooses what holds for the workbench as a whole. */
public final class GeneralPage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

    private static final int IN_ONE_ROW = 3;

    private BooleanFieldEditor autosave;
    private IntegerFieldEditor minutes;

    /** Called by the platform. */
    public GeneralPage() {
        super(GRID);
    }

    @Override
    public void init(IWorkbench workbench) {
        setPreferenceStore(Preferences.ofWorkbench().store());
    }

    @Override
    protected void createFieldEditors() {
        addField(new RadioGroupFieldEditor(Preferences.NEW_PROJECTS_IN, PreferenceText.newProjectsIn, IN_ONE_ROW,
                new String[][]{{PreferenceText.inches, DisplayUnit.INCH.name()},
                        {PreferenceText.millimetres, DisplayUnit.MILLIMETRE.name()}},
                getFieldEditorParent(), true));
        addField(new RadioGroupFieldEditor(Preferences.APPEARANCE, PreferenceText.appearance, IN_ONE_ROW,
                new String[][]{{PreferenceText.asDesktop, Appearance.AS_DESKTOP.name()},
                        {PreferenceText.light, Appearance.LIGHT.name()}, {PreferenceText.dark, Appearance.DARK.name()}},
                getFieldEditorParent(), true));
        autosave = new BooleanFieldEditor(Preferences.AUTOSAVE, PreferenceText.autosave, getFieldEditorParent());
        addField(autosave);
        minutes = new IntegerFieldEditor(Preferences.AUTOSAVE_MINUTES,
                PreferenceText.autosaveMinutes, getFieldEditorParent());
        minutes.setValidRange(Preferences.LEAST_MINUTES, Preferences.MOST_MINUTES);
        minutes.setErrorMessage(PreferenceText.minutesRange);
        addField(minutes);
    }

    @Override
    protected void initialize() {
        super.initialize();
        enableMinutes();
    }

    @Override
    protected void performDefaults() {
        super.performDefaults();
        enableMinutes();
    }

    @Override
    public void propertyChange(PropertyChangeEvent event) {
        super.propertyChange(event);
        enableMinutes();
    }

    /** How long to wait is a question only if projects save themselves. */
    private void enableMinutes() {
        minutes.setEnabled(autosave.getBooleanValue(), getFieldEditorParent());
    }
}
