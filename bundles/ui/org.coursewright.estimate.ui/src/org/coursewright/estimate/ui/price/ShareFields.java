package org.coursewright.estimate.ui.price;

import java.util.List;
import java.util.Optional;

import org.coursewright.estimate.ui.part.TypedField;
import org.coursewright.model.edit.PropertyDescriptors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;

/** Taxes, overhead and contingency, typed as parts of 1. */
final class ShareFields extends Composite {

    private final List<TypedField> fields;
    private final Label note;

    ShareFields(Composite parent, Shares shares) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(this);
        Group group = new Group(this, SWT.NONE);
        group.setText(PriceText.shares);
        GridLayoutFactory.swtDefaults().numColumns(4).spacing(8, 6).applyTo(group);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        fields = Shares.ALL.stream().map(share -> field(group, share, shares)).toList();
        note = new Label(group, SWT.WRAP);
        GridDataFactory.fillDefaults().span(4, 1).grab(true, false).hint(200, SWT.DEFAULT).applyTo(note);
        explain(Optional.empty());
    }

    private TypedField field(Composite group, EAttribute share, Shares shares) {
        return new TypedField(group, PropertyDescriptors.labelOf(share), () -> shares.of(share), this::explain);
    }

    private void explain(Optional<String> refusal) {
        note.setText(refusal.orElse(PriceText.sharesNote));
        layout(true, true);
    }

    void refresh() {
        fields.forEach(TypedField::refresh);
    }
}
