package org.coursewright.estimate.ui.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.coursewright.core.cost.QuantityGroup;
import org.coursewright.core.cost.QuantityRow;
import org.coursewright.core.display.Amount;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TreeColumn;

/** The table: a branch for each group with its total, below it the lines. */
final class QuantityTree {

    private static final int IN_FEET = 120;

    private final TreeViewer viewer;
    private final TreeColumn inFeet;
    private Amount words;

    /**
     * @param parent of the table
     * @param words how the project writes lengths
     */
    QuantityTree(Composite parent, Amount words) {
        this.words = words;
        viewer = new TreeViewer(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        viewer.getTree().setHeaderVisible(true);
        viewer.setContentProvider(new QuantityContent());
        column(TakeoffText.item, 220, SWT.LEFT, QuantityGroup::title, this::item);
        column(TakeoffText.kind, 165, SWT.LEFT, group -> NLS.bind(TakeoffText.total, group.rows().size()),
                QuantityRow::kind);
        column(TakeoffText.element, 70, SWT.LEFT, group -> "", row -> row.element().orElse(""));
        column(TakeoffText.quantity, 110, SWT.RIGHT, group -> group.total().map(Figures::value).orElse(""),
                row -> Figures.value(row.line().quantity()));
        column(TakeoffText.unit, 50, SWT.LEFT, group -> group.total().map(Figures::unit).orElse(""),
                row -> Figures.unit(row.line().quantity()));
        inFeet = column(TakeoffText.also, IN_FEET, SWT.RIGHT, group -> "", row -> row.line().inFeet().map(
                Figures::quantity).orElse(""));
        AccessibleName.give(viewer.getTree(), TakeoffText.accessibleTable);
    }

    private TreeColumn column(String title, int width, int alignment, Function<QuantityGroup, String> ofGroup,
            Function<QuantityRow, String> ofRow) {
        TreeViewerColumn column = new TreeViewerColumn(viewer, alignment);
        column.getColumn().setText(title);
        column.getColumn().setWidth(width);
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return element instanceof QuantityGroup group
                        ? ofGroup.apply(group)
                        : ofRow.apply(
                                (QuantityRow) element);
            }

            @Override
            public Font getFont(Object element) {
                return element instanceof QuantityGroup
                        ? JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT)
                        : null;
            }
        });
        return column.getColumn();
    }

    private String item(QuantityRow row) {
        return words.inProject(row.item());
    }

    TreeViewer viewer() {
        return viewer;
    }

    /**
     * Shows other groups; the line that was selected stays so if it is still there.
     *
     * @param groups to be shown
     * @param format how the project writes lengths now
     */
    void show(List<QuantityGroup> groups, Amount format) {
        showInFeet(format.lengths().unit() != DisplayUnit.MILLIMETRE);
        words = format;
        Optional<QuantityRow> before = selected();
        viewer.setInput(groups);
        viewer.expandAll();
        before.flatMap(row -> groups.stream().flatMap(group -> group.rows().stream()).filter(each -> isSameLine(row,
                each)).findFirst()).ifPresent(row -> viewer.setSelection(new StructuredSelection(row), true));
    }

    /** Who plans in millimetres has no use for feet. */
    private void showInFeet(boolean wanted) {
        // a column without a width is there but not seen; one that has a width keeps what somebody made of it
        if (inFeet.getResizable() != wanted) {
            inFeet.setResizable(wanted);
            inFeet.setWidth(wanted ? IN_FEET : 0);
        }
    }

    private static boolean isSameLine(QuantityRow one, QuantityRow other) {
        return one.item().equals(other.item()) && one.kind().equals(other.kind()) && one.element().equals(other
                .element());
    }

    /** @return the line that is selected, if it is a line */
    Optional<QuantityRow> selected() {
        return viewer.getStructuredSelection().getFirstElement() instanceof QuantityRow row
                ? Optional.of(row)
                : Optional.empty();
    }

}
