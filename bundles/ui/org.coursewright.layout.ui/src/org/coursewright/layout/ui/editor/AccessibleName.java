package org.coursewright.layout.ui.editor;

import java.util.function.Supplier;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Names controls for those who hear the screen. */
final class AccessibleName {

    private AccessibleName() {
    }

    static void give(Control control, String name) {
        give(control, () -> name);
    }

    static void give(Control control, Supplier<String> name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name.get();
            }
        });
    }
}
