package org.coursewright.workbench.internal.properties;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.PropertyDescriptor;
import org.coursewright.model.edit.ValueKind;
import org.coursewright.workbench.internal.element.ElementIcons;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** All properties of one element, under the headings of their groups. */
final class ElementForm extends ScrolledComposite {

    private static final int COLUMNS = 2;
    private static final int MARGIN = 8;
    private static final int INDENT = 10;
    private static final int GAP = 8;

    private final ElementEditing editing;
    private final Composite body;
    private final CLabel title;
    private final List<PropertyField> fields = new ArrayList<>();

    ElementForm(Composite parent, ElementEditing editing) {
        super(parent, SWT.H_SCROLL | SWT.V_SCROLL);
        this.editing = editing;
        body = new Composite(this, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).margins(MARGIN, MARGIN).spacing(GAP, 4).applyTo(body);
        title = new CLabel(body, SWT.NONE);
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        title.setImage(new LocalResourceManager(JFaceResources.getResources(), this)
                .create(ElementIcons.of(editing.element())));
        title.setMargins(0, 0, 0, 0);
        GridDataFactory.fillDefaults().span(COLUMNS, 1).applyTo(title);
        createGroups();
        setContent(body);
        setExpandHorizontal(true);
        setExpandVertical(true);
        refresh();
        fit();
    }

    EObject element() {
        return editing.element();
    }

    /** Shows the values that the element has now, except where somebody is typing. */
    void refresh() {
        title.setText(ElementLabels.of(element()));
        fields.forEach(PropertyField::refresh);
    }

    @Override
    public boolean setFocus() {
        return !fields.isEmpty() && fields.get(0).setFocus();
    }

    private void createGroups() {
        grouped().forEach((group, properties) -> {
            createHeading(group);
            properties.forEach(property -> fields.add(PropertyField.create(body, editing, property, this::fit)));
        });
    }

    /** In the order of the model, but long texts last: they take much room and are seldom looked for. */
    private Map<String, List<PropertyDescriptor>> grouped() {
        return editing.properties().stream()
                .sorted(Comparator.comparing(property -> property.kind() == ValueKind.LONG_TEXT))
                .collect(Collectors.groupingBy(PropertyDescriptor::group, LinkedHashMap::new, Collectors.toList()));
    }

    private void createHeading(String group) {
        Composite heading = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(heading);
        GridDataFactory.fillDefaults().span(COLUMNS, 1).indent(0, INDENT).grab(true, false).applyTo(heading);
        new Label(heading, SWT.NONE).setText(group);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false)
                .applyTo(new Label(heading, SWT.SEPARATOR | SWT.HORIZONTAL));
    }

    private void fit() {
        body.layout(true, true);
        setMinSize(body.computeSize(SWT.DEFAULT, SWT.DEFAULT));
    }
}
