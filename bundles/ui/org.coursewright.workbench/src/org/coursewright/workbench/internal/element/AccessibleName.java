package org.coursewright.workbench.internal.element;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Tells screen readers what a field is called. */
public final class AccessibleName extends AccessibleAdapter {

    /** Under this key a control keeps its name, for whoever wants to know it here. */
    public static final String KEY = AccessibleName.class.getName();

    private final String name;

    /** @param name what screen readers are to say */
    public AccessibleName(String name) {
        this.name = name;
    }

    /** @param control that goes by the name from now on */
    public void applyTo(Control control) {
        control.getAccessible().addAccessibleListener(this);
        control.setData(KEY, name);
    }

    @Override
    public void getName(AccessibleEvent event) {
        event.result = name;
    }
}
