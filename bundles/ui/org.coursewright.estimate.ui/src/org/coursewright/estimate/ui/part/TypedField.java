package org.coursewright.estimate.ui.part;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** A labelled field for one property. Enter, or going elsewhere, makes the edit; Escape gives up. */
public final class TypedField {

    private static final int WIDTH = 70;

    private final Text text;
    private final Supplier<? extends Optional<? extends TypedValue>> property;
    private final Consumer<Optional<String>> refused;

    /**
     * @param parent with a grid of two columns
     * @param label of the field, with the unit
     * @param property that is shown, empty while there is none
     * @param refused told the reason, or none if the edit was made
     */
    public TypedField(Composite parent, String label, Supplier<? extends Optional<? extends TypedValue>> property,
            Consumer<Optional<String>> refused) {
        this.property = property;
        this.refused = refused;
        Label words = new Label(parent, SWT.NONE);
        words.setText(label);
        text = new Text(parent, SWT.BORDER | SWT.SINGLE | SWT.RIGHT);
        GridDataFactory.swtDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(text);
        AccessibleName.give(text, label);
        text.addListener(SWT.DefaultSelection, event -> commit());
        text.addListener(SWT.FocusOut, event -> commit());
        text.addListener(SWT.KeyDown, this::giveUp);
        refresh();
    }

    private void commit() {
        property.get().filter(each -> !each.text().equals(text.getText())).ifPresent(each -> {
            Optional<String> reason = each.set(text.getText());
            refused.accept(reason);
            if (reason.isEmpty()) {
                refresh();
            }
        });
    }

    private void giveUp(Event event) {
        if (event.keyCode == SWT.ESC) {
            refused.accept(Optional.empty());
            refresh();
        }
    }

    /** Shows the value that the property has now. */
    public void refresh() {
        text.setEnabled(property.get().isPresent());
        String value = property.get().map(TypedValue::text).orElse("");
        if (!text.getText().equals(value)) {
            text.setText(value);
        }
    }
}
