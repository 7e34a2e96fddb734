package org.coursewright.estimate.ui.part;

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
     * @param name its name from now on
     */
    public static void give(Control control, String name) {
        give(control, () -> name);
    }

    /**
     * @param control to be named
     * @param name asked for its name each time
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
