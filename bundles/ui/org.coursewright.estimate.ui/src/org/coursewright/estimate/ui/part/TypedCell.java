package org.coursewright.estimate.ui.part;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TextCellEditor;

/**
 * Lets a cell be typed over. What cannot be had is refused with a reason, and nothing changes.
 *
 * @param <R> type of the rows
 */
public final class TypedCell<R> extends EditingSupport {

    private final TableViewer viewer;
    private final Class<R> type;
    private final Function<R, Optional<? extends TypedValue>> property;
    private final Consumer<Optional<String>> refused;

    /**
     * @param viewer of the table
     * @param type of its rows
     * @param property that a row's cell shows, empty if it cannot be typed
     * @param refused told the reason, or none if the edit was made
     */
    public TypedCell(TableViewer viewer, Class<R> type, Function<R, Optional<? extends TypedValue>> property,
            Consumer<Optional<String>> refused) {
        super(viewer);
        CellKeys.enable(viewer);
        this.viewer = viewer;
        this.type = type;
        this.property = property;
        this.refused = refused;
    }

    private Optional<? extends TypedValue> property(Object row) {
        return property.apply(type.cast(row));
    }

    @Override
    protected CellEditor getCellEditor(Object row) {
        return new TextCellEditor(viewer.getTable());
    }

    @Override
    protected boolean canEdit(Object row) {
        return property(row).isPresent();
    }

    @Override
    protected Object getValue(Object row) {
        return property(row).map(TypedValue::text).orElse("");
    }

    @Override
    protected void setValue(Object row, Object typed) {
        property(row).ifPresent(each -> refused.accept(each.set(String.valueOf(typed))));
    }
}
