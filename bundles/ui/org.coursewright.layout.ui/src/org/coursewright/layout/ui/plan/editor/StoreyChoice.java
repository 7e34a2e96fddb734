package org.coursewright.layout.ui.plan.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.model.building.Storey;
import org.coursewright.model.edit.ElementLabels;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Lets somebody choose one of the storeys, or none if that is allowed. */
final class StoreyChoice extends Composite {

    private final Combo combo;
    private final Optional<String> none;
    private List<Storey> storeys = List.of();

    /**
     * @param parent of the choice
     * @param name what is chosen
     * @param none what choosing no storey is called, empty if one must be chosen
     * @param chosen told what was chosen
     */
    StoreyChoice(Composite parent, String name, Optional<String> none, Consumer<Optional<Storey>> chosen) {
        super(parent, SWT.NONE);
        this.none = none;
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 0).applyTo(this);
        new Label(this, SWT.NONE).setText(name);
        combo = new Combo(this, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name;
            }
        });
        combo.addListener(SWT.Selection, event -> chosen.accept(choice()));
    }

    private Optional<Storey> choice() {
        int index = combo.getSelectionIndex() - (none.isPresent() ? 1 : 0);
        return index < 0 ? Optional.empty() : Optional.of(storeys.get(index));
    }

    /** Offers storeys, one of which is chosen. */
    void show(List<Storey> offered, Optional<Storey> chosen) {
        storeys = List.copyOf(offered);
        List<String> names = new ArrayList<>(none.stream().toList());
        storeys.forEach(storey -> names.add(ElementLabels.of(storey)));
        if (!names.equals(List.of(combo.getItems()))) {
            combo.setItems(names.toArray(String[]::new));
            requestLayout();
        }
        combo.select(chosen.map(storeys::indexOf).orElse(-1) + (none.isPresent() ? 1 : 0));
        combo.setEnabled(names.size() > 1);
    }
}
