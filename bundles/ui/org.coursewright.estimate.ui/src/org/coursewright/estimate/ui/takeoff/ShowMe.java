package org.coursewright.estimate.ui.takeoff;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.coursewright.core.bond.UnitCount;
import org.coursewright.core.cost.QuantityRow;
import org.coursewright.core.display.Amount;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.measure.LengthFormat;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** Below the table: how the selected line came about, and the walls it was taken from. */
final class ShowMe extends Composite {

    private final Label title;
    private final Label formula;
    private final Table inputs;
    private final Table from;
    private final Button open;
    private final WallOpener opener;
    private List<TakenFrom> walls = List.of();

    /**
     * @param parent of the pane
     * @param opener shows pieces of walls
     */
    ShowMe(Composite parent, WallOpener opener) {
        super(parent, SWT.NONE);
        this.opener = opener;
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 4).spacing(8, 4).applyTo(this);
        title = new Label(this, SWT.WRAP);
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(1, SWT.DEFAULT)
                .applyTo(title);
        open = new Button(this, SWT.PUSH);
        open.setText(TakeoffText.showInWall);
        GridDataFactory.swtDefaults().align(SWT.END, SWT.CENTER).applyTo(open);
        formula = new Label(this, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(1, SWT.DEFAULT).applyTo(formula);
        inputs = table(TakeoffText.accessibleInputs, TakeoffText.input, 210, TakeoffText.value, 130);
        from = table(TakeoffText.accessibleFrom, TakeoffText.from, 90, TakeoffText.ofCourses, 150);
        open.addListener(SWT.Selection, event -> open());
        from.addListener(SWT.DefaultSelection, event -> open());
        from.addListener(SWT.Selection, event -> open.setEnabled(canOpen()));
        show(Optional.empty(), Set.of(), wall -> Map.of(), new Amount(LengthFormat.INCHES));
    }

    private Table table(String name, String first, int firstWidth, String second, int secondWidth) {
        Table table = new Table(this, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).hint(firstWidth + secondWidth, 60).applyTo(table);
        column(table, first, firstWidth);
        column(table, second, secondWidth);
        AccessibleName.give(table, name);
        return table;
    }

    private static void column(Table table, String title, int width) {
        TableColumn column = new TableColumn(table, SWT.LEFT);
        column.setText(title);
        column.setWidth(width);
    }

    /**
     * @param row to be explained, or none
     * @param marks of all walls
     * @param laid pieces of a wall by course; none if that is not known
     * @param words how the project writes lengths
     */
    void show(Optional<QuantityRow> row, Set<String> marks, Function<String, ? extends Map<Integer, UnitCount>> laid,
            Amount words) {
        title.setText(row.map(each -> NLS.bind(TakeoffText.showMe, words.inProject(each.item()), each.kind())).orElse(
                TakeoffText.none));
        formula.setText(row.map(QuantityRow::line).map(line -> NLS.bind(TakeoffText.formula, Figures.quantity(line
                .quantity()), line.expression()) + "\n" + NLS.bind(TakeoffText.source, line.source())).orElse(""));
        title.requestLayout();
        formula.requestLayout();
        inputs.removeAll();
        row.ifPresent(each -> each.line().inputs().forEach(input -> add(inputs, words.inProject(input.symbol()), words
                .exact(input.value()))));
        walls = row.map(each -> TakenFrom.of(each.line(), marks, laid)).orElse(List.of());
        from.removeAll();
        walls.forEach(each -> add(from, each.wall(), courses(each)));
        open.setEnabled(canOpen());
        layout();
    }

    private static void add(Table table, String first, String second) {
        new TableItem(table, SWT.NONE).setText(new String[]{first, second});
    }

    private static String courses(TakenFrom taken) {
        return taken.ranges().stream().map(range -> range.get(0).equals(range.get(1))
                ? NLS.bind(TakeoffText.oneCourse, range.get(0))
                : NLS.bind(TakeoffText.courses, range.get(0), range.get(1)))
                .collect(Collectors.joining(TakeoffText.andCourses));
    }

    private boolean canOpen() {
        return from.getSelectionIndex() >= 0 && opener.canOpen();
    }

    private void open() {
        if (canOpen()) {
            opener.open(walls.get(from.getSelectionIndex()));
        }
    }
}
