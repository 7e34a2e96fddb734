package org.coursewright.workbench.internal.preference;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.runtime.preferences.AbstractPreferenceInitializer;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;

/** What holds until somebody chooses. Saving by itself is off: a file on the disk changes when a person says so. */
public final class Defaults extends AbstractPreferenceInitializer {

    private static final int MINUTES = 10;

    @Override
    public void initializeDefaultPreferences() {
        IEclipsePreferences defaults = DefaultScope.INSTANCE.getNode(WorkbenchIds.BUNDLE);
        defaults.put(Preferences.NEW_PROJECTS_IN, DisplayUnit.INCH.name());
        defaults.putBoolean(Preferences.AUTOSAVE, false);
        defaults.putInt(Preferences.AUTOSAVE_MINUTES, MINUTES);
        defaults.put(Preferences.APPEARANCE, Appearance.AS_DESKTOP.name());
    }
}
