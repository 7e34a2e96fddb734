package org.coursewright.workbench.internal.window;

import java.io.IOException;

import org.eclipse.core.runtime.Platform;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.osgi.util.NLS;

/**
 * The folder in which the platform keeps settings and the layout of the window, held against other workbenches: two that
 * write to it at the same time would overwrite each other's.
 *
 * @param location of the folder
 * @param isOurs whether this process may use it until it is closed
 * @param explanation why not, for whoever started this process; empty if it may
 */
record SettingsFolder(Location location, boolean isOurs, String explanation) implements AutoCloseable {

    static SettingsFolder ofInstance() {
        return of(Platform.getInstanceLocation());
    }

    static SettingsFolder of(Location location) {
        String folder = String.valueOf(location.getURL().getPath());
        try {
            boolean locked = location.lock();
            return new SettingsFolder(location, locked, locked ? "" : NLS.bind(WindowText.settingsInUse, folder));
        } catch (IOException e) {
            return new SettingsFolder(location, false,
                    NLS.bind(WindowText.settingsUnusable, folder, e.getLocalizedMessage()));
        }
    }

    @Override
    public void close() {
        if (isOurs) {
            location.release();
        }
    }
}
