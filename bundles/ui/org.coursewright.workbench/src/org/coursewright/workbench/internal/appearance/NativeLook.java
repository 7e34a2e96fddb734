package org.coursewright.workbench.internal.appearance;

import java.lang.reflect.InvocationTargetException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;

/**
 * Switches the native widgets between light and dark. The toolkit has the same method for it on every platform, in a class
 * whose name differs and which is not public; without it, style sheets alone decide.
 */
final class NativeLook {

    private NativeLook() {
    }

    static void show(Look look) {
        try {
            Class.forName("org.eclipse.swt.internal." + SWT.getPlatform() + ".OS").getMethod("setTheme", boolean.class)
                    .invoke(null, look == Look.DARK);
        } catch (ClassNotFoundException | NoSuchMethodException | IllegalAccessException
                | InvocationTargetException e) {
            ILog.of(NativeLook.class).warn(AppearanceText.nativeLookFailed, e);
        }
    }
}
