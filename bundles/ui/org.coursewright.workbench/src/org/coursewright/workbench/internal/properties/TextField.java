package org.coursewright.workbench.internal.properties;

import org.coursewright.model.edit.PropertyDescriptor;
import org.coursewright.model.edit.ValueKind;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/**
 * A property that is typed. Enter, or going elsewhere, makes the edit; Escape gives up. What cannot be changed has no
 * frame.
 */
final class TextField extends PropertyField {

    private static final int NOTE_HEIGHT = 60;

    private Text text;

    TextField(ElementEditing editing, PropertyDescriptor property, Runnable fit) {
        super(editing, property, fit);
    }

    @Override
    Control createControl(Composite form) {
        text = new Text(form, style());
        if (property().editable()) {
            text.addListener(SWT.DefaultSelection, event -> commit());
            text.addListener(SWT.FocusOut, event -> commit());
            text.addListener(SWT.KeyDown, this::giveUp);
        }
        return text;
    }

    private int style() {
        int lines = isLong() ? SWT.MULTI | SWT.WRAP | SWT.V_SCROLL : SWT.SINGLE;
        return lines | (property().editable() ? SWT.BORDER : SWT.READ_ONLY);
    }

    private void giveUp(Event event) {
        if (event.keyCode == SWT.ESC) {
            revert();
        }
    }

    private boolean isLong() {
        return property().kind() == ValueKind.LONG_TEXT;
    }

    @Override
    int height() {
        return isLong() ? NOTE_HEIGHT : super.height();
    }

    @Override
    int verticalAlignment() {
        return isLong() ? SWT.BEGINNING : super.verticalAlignment();
    }

    @Override
    String typed() {
        return text.getText();
    }

    @Override
    void show(String value) {
        text.setText(value);
    }
}
