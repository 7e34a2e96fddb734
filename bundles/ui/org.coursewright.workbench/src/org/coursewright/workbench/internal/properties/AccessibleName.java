package org.coursewright.workbench.internal.properties;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Tells screen readers what a field is called. */
final class AccessibleName extends AccessibleAdapter {

    private final String name;

    AccessibleName(String name) {
        this.name = name;
    }

    void applyTo(Control control) {
        control.getAccessible().addAccessibleListener(this);
    }

    @Override
    public void getName(AccessibleEvent event) {
        event.result = name;
    }
}
