package org.coursewright.workbench.internal.preference;

import java.util.Optional;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

/**
 * What a person has chosen.
 *
 * @param store where the choices are kept
 */
public record Preferences(IPreferenceStore store) {

    /** Name of a {@link DisplayUnit}: in what new projects show lengths. */
    public static final String NEW_PROJECTS_IN = "newProjectsIn";
    /** Whether projects save themselves. */
    public static final String AUTOSAVE = "autosave";
    /** After how many minutes they do. */
    public static final String AUTOSAVE_MINUTES = "autosaveMinutes";
    /** Name of an {@link Appearance}. */
    public static final String APPEARANCE = "appearance";

    /** Least and most minutes that may be chosen. */
    static final int LEAST_MINUTES = 1;
    static final int MOST_MINUTES = 120;

    /** @return the choices of this workbench */
    public static Preferences ofWorkbench() {
        return new Preferences(new ScopedPreferenceStore(InstanceScope.INSTANCE, WorkbenchIds.BUNDLE));
    }

    /** @return in what new projects show lengths */
    public DisplayUnit newProjectsIn() {
        return DisplayUnit.valueOf(store.getString(NEW_PROJECTS_IN));
    }

    /** @return after how many minutes projects save themselves, empty if they do not */
    public Optional<Integer> autosaveMinutes() {
        return store.getBoolean(AUTOSAVE) ? Optional.of(store.getInt(AUTOSAVE_MINUTES)) : Optional.empty();
    }

    /** @return light, dark, or as the desktop is */
    public Appearance appearance() {
        return Appearance.valueOf(store.getString(APPEARANCE));
    }
}
