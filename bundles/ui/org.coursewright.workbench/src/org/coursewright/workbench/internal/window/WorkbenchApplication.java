package org.coursewright.workbench.internal.window;

import org.coursewright.workbench.internal.appearance.Looks;
import org.coursewright.workbench.internal.preference.Preferences;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;

/** Opens the workbench and stays until it is closed, unless another one uses the same settings. */
public final class WorkbenchApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        StartArguments arguments = StartArguments.of(Platform.getApplicationArgs());
        Display display = PlatformUI.createDisplay();
        try (SettingsFolder settings = SettingsFolder.ofInstance()) {
            if (!settings.isOurs()) {
                MessageDialog.openError(null, Platform.getProduct().getName(), settings.explanation());
                return EXIT_OK;
            }
            new Looks(Preferences.ofWorkbench()).prepare();
            int code = PlatformUI.createAndRunWorkbench(display, new CoursewrightAdvisor(arguments));
            return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    @Override
    public void stop() {
        if (PlatformUI.isWorkbenchRunning()) {
            IWorkbench workbench = PlatformUI.getWorkbench();
            workbench.getDisplay().syncExec(workbench::close);
        }
    }
}
