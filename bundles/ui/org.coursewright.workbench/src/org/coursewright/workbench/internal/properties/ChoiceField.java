package org.coursewright.workbench.internal.properties;

import java.util.List;

import org.coursewright.model.edit.PropertyDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** A property that is chosen from a list. */
final class ChoiceField extends PropertyField {

    private Combo combo;

    ChoiceField(ElementEditing editing, PropertyDescriptor property, Runnable fit) {
        super(editing, property, fit);
    }

    @Override
    Control createControl(Composite form) {
        combo = new Combo(form, SWT.DROP_DOWN | SWT.READ_ONLY);
        combo.addListener(SWT.Selection, event -> commit());
        // Scrolling through the form must not change what the pointer happens to pass over.
        combo.addListener(SWT.MouseVerticalWheel, event -> event.doit = false);
        return combo;
    }

    @Override
    String typed() {
        return combo.getText();
    }

    @Override
    void show(String value) {
        List<String> choices = editing().choices(property());
        combo.setItems(choices.toArray(String[]::new));
        combo.select(choices.indexOf(value));
        // what is chosen may be longer than there is room for
        combo.setToolTipText(value);
    }
}
