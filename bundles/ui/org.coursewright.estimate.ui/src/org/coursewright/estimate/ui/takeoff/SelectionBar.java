package org.coursewright.estimate.ui.takeoff;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.cost.QuantityGrouping;
import org.coursewright.core.cost.QuantityRow;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Above the table: how lines are put together, and which are shown. */
final class SelectionBar extends Composite {

    private static final int COLUMNS = 6;
    private static final List<QuantityGrouping> GROUPINGS = List.of(QuantityGrouping.KIND, QuantityGrouping.ITEM,
            QuantityGrouping.ELEMENT);

    private final Combo grouping;
    private final Combo kind;
    private final Text search;

    /**
     * @param parent of the bar
     * @param changed run each time something else is wanted
     */
    SelectionBar(Composite parent, Runnable changed) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).margins(8, 2).spacing(6, 2).applyTo(this);
        grouping = combo(TakeoffText.group, changed);
        grouping.setItems(TakeoffText.byKind, TakeoffText.byItem, TakeoffText.byElement);
        grouping.select(0);
        kind = combo(TakeoffText.filter, changed);
        kind.setItems(TakeoffText.everyKind);
        kind.select(0);
        new Label(this, SWT.NONE).setText(TakeoffText.search);
        search = new Text(this, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage(TakeoffText.searchHint);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
        search.addListener(SWT.Modify, event -> changed.run());
    }

    private Combo combo(String label, Runnable changed) {
        new Label(this, SWT.NONE).setText(label);
        Combo combo = new Combo(this, SWT.READ_ONLY);
        combo.addListener(SWT.Selection, event -> changed.run());
        return combo;
    }

    /** Offers the kinds that there are now. */
    void offer(List<QuantityRow> rows) {
        String chosen = kind.getText();
        List<String> kinds = rows.stream().map(QuantityRow::kind).distinct().toList();
        kind.setItems(kinds.toArray(String[]::new));
        kind.add(TakeoffText.everyKind, 0);
        kind.select(Math.max(0, kind.indexOf(chosen)));
        layout();
    }

    QuantitySelection selection() {
        return new QuantitySelection(GROUPINGS.get(grouping.getSelectionIndex()), kind.getSelectionIndex() > 0
                ? Optional.of(kind.getText())
                : Optional.empty(), search.getText());
    }
}
