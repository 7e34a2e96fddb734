package org.coursewright.estimate.ui.scenario;

import java.util.List;
import java.util.function.Function;

import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/**
 * A label and the values that one can choose behind it, the first of them chosen.
 *
 * @param <T> type of the values
 */
final class ChoiceField<T> {

    private final Combo combo;
    private final List<T> values;

    /**
     * @param parent with a layout of two columns
     * @param label before the values
     * @param values at least one
     * @param words what is read for a value
     * @param chosen run after each change
     */
    ChoiceField(Composite parent, String label, List<T> values, Function<T, String> words, Runnable chosen) {
        this.values = values;
        new Label(parent, SWT.NONE).setText(label);
        combo = new Combo(parent, SWT.READ_ONLY);
        combo.setItems(values.stream().map(words).toArray(String[]::new));
        combo.select(0);
        combo.addListener(SWT.Selection, event -> chosen.run());
        AccessibleName.give(combo, label);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
    }

    T chosen() {
        return values.get(combo.getSelectionIndex());
    }
}
