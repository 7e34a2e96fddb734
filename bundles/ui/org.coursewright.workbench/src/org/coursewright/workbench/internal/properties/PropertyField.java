package org.coursewright.workbench.internal.properties;

import java.util.Optional;

import org.coursewright.model.edit.PropertyDescriptor;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** One property in a form: its label with the unit, its value, and below them why what was typed is refused. */
abstract class PropertyField {

    /** Least width; a field takes whatever room its view has. */
    private static final int WIDTH = 64;

    private final ElementEditing editing;
    private final PropertyDescriptor property;
    private final Runnable fit;
    private Control control;
    private RefusalLine refusal;
    private String shown = "";

    /**
     * @param editing the element that has the property
     * @param property which
     * @param fit to be run when the field needs more or less room
     */
    PropertyField(ElementEditing editing, PropertyDescriptor property, Runnable fit) {
        this.editing = editing;
        this.property = property;
        this.fit = fit;
    }

    /** Adds a row of two columns with the kind of field that suits a property. */
    static PropertyField create(Composite form, ElementEditing editing, PropertyDescriptor property, Runnable fit) {
        boolean chosen = property.editable() && !editing.choices(property).isEmpty();
        PropertyField field = chosen
                ? new ChoiceField(editing, property, fit)
                : new TextField(editing, property, fit);
        field.createRow(form);
        return field;
    }

    private void createRow(Composite form) {
        Label label = new Label(form, SWT.NONE);
        label.setText(labelText());
        label.setToolTipText(property.help());
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, verticalAlignment()).applyTo(label);
        control = createControl(form);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, height()).align(SWT.FILL, SWT.CENTER)
                .applyTo(control);
        AccessibleName.give(control, property.label());
        refusal = new RefusalLine(form);
    }

    private String labelText() {
        return property.unit().isEmpty()
                ? NLS.bind(PropertiesText.label, property.label())
                : NLS.bind(PropertiesText.labelWithUnit, property.label(), property.unit());
    }

    /** Makes the widget, which shows nothing yet. */
    abstract Control createControl(Composite form);

    abstract String typed();

    abstract void show(String text);

    int height() {
        return SWT.DEFAULT;
    }

    int verticalAlignment() {
        return SWT.CENTER;
    }

    final PropertyDescriptor property() {
        return property;
    }

    final ElementEditing editing() {
        return editing;
    }

    final boolean setFocus() {
        return !control.isDisposed() && control.setFocus();
    }

    /** Shows the value that the property has now, unless somebody has typed something that is not accepted yet. */
    final void refresh() {
        if (typed().equals(shown)) {
            revert();
        }
    }

    /** Shows the value that the property has now, whatever was typed. */
    final void revert() {
        shown = editing.text(property);
        if (!typed().equals(shown)) {
            show(shown);
        }
        explain(Optional.empty());
    }

    /** Gives the property what was typed, or says why it cannot be had. */
    final void commit() {
        if (typed().equals(shown)) {
            return;
        }
        Optional<String> reason = editing.set(property, typed());
        if (reason.isEmpty()) {
            revert();
        }
        explain(reason);
    }

    private void explain(Optional<String> reason) {
        if (refusal.show(reason)) {
            fit.run();
        }
    }
}
