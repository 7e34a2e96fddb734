package org.coursewright.layout.ui.accessible;

import java.util.function.Supplier;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Names controls for those who hear the screen. */
public final class AccessibleName {

    private AccessibleName() {
    }

    /**
     * @param control to be named
     * @param name of it
     */
    public static void give(Control control, String name) {
        give(control, () -> name);
    }

    /**
     * @param control to be named
     * @param name of it, asked for each time
     */
    public static void give(Control control, Supplier<String> name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name.get();
            }
        });
    }
}
