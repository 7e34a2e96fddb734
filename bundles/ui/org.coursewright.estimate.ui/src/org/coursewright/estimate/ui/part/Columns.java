package org.coursewright.estimate.ui.part;

import java.util.function.Function;

import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;

/**
 * Adds columns to a table whose rows are all of one type.
 *
 * @param viewer of the table
 * @param type of the rows
 * @param <R> the same
 */
public record Columns<R>(TableViewer viewer, Class<R> type) {

    /**
     * @param title of a column of words
     * @param width in pixels
     * @param text of a row's cell
     * @return the column
     */
    public TableViewerColumn words(String title, int width, Function<R, String> text) {
        return add(title, width, SWT.LEFT, text);
    }

    /**
     * @param title of a column of numbers
     * @param width in pixels
     * @param text of a row's cell
     * @return the column
     */
    public TableViewerColumn numbers(String title, int width, Function<R, String> text) {
        return add(title, width, SWT.RIGHT, text);
    }

    private TableViewerColumn add(String title, int width, int alignment, Function<R, String> text) {
        TableViewerColumn column = new TableViewerColumn(viewer, alignment);
        column.getColumn().setText(title);
        column.getColumn().setWidth(width);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return text.apply(type.cast(element));
            }
        });
        return column;
    }
}
