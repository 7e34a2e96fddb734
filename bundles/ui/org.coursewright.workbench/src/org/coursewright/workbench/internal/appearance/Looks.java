package org.coursewright.workbench.internal.appearance;

import org.coursewright.workbench.internal.preference.Preferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** Makes the workbench look as somebody chose, from its first picture on, and changes it when they choose otherwise. */
public final class Looks {

    private static final String ENGINE_SETTINGS = "org.eclipse.e4.ui.css.swt.theme";
    private static final String ENGINE_THEME = "themeid";

    private final Preferences preferences;

    /** @param preferences what was chosen */
    public Looks(Preferences preferences) {
        this.preferences = preferences;
    }

    /** To be called after the display is there and before the workbench is: nothing is ever seen in the wrong look. */
    public void prepare() {
        Look look = Look.of(preferences.appearance());
        NativeLook.show(look);
        look.giveInks();
        InstanceScope.INSTANCE.getNode(ENGINE_SETTINGS).put(ENGINE_THEME, look.themeId());
    }

    /** From now on follows what is chosen. */
    public void follow() {
        preferences.store().addPropertyChangeListener(event -> {
            if (event.getProperty().equals(Preferences.APPEARANCE)) {
                Display.getDefault().asyncExec(this::show);
            }
        });
    }

    private void show() {
        Look look = Look.of(preferences.appearance());
        NativeLook.show(look);
        look.giveInks();
        PlatformUI.getWorkbench().getService(IThemeEngine.class).setTheme(look.themeId(), true);
    }
}
