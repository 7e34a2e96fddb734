package org.coursewright.estimate.ui.price;

import java.util.function.Supplier;

import org.coursewright.core.cost.MakeOrCutLine;
import org.coursewright.core.cost.MakeOrCutReport;
import org.coursewright.estimate.ui.part.Columns;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.measure.LengthFormat;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** For every length that is cut or stocked: whether having it made pays against cutting it. */
final class SpecialPage extends Composite {

    private final TableViewer table;
    private final Label note;

    /**
     * @param parent of the page
     * @param format how the project writes lengths
     */
    SpecialPage(Composite parent, Supplier<LengthFormat> format) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(8, 6).spacing(6, 6).applyTo(this);
        Label words = new Label(this, SWT.WRAP);
        words.setText(PriceText.specialNote);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(words);
        table = new TableViewer(this, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.getTable().setHeaderVisible(true);
        table.setContentProvider(ArrayContentProvider.getInstance());
        GridDataFactory.fillDefaults().grab(true, true).hint(100, 100).applyTo(table.getTable());
        AccessibleName.give(table.getTable(), PriceText.accessibleSpecials);
        addColumns(format);
        note = new Label(this, SWT.WRAP);
        note.setText(PriceText.notYet);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, 20).applyTo(note);
        table.addSelectionChangedListener(event -> explain());
    }

    private void addColumns(Supplier<LengthFormat> format) {
        Columns<MakeOrCutLine> columns = new Columns<>(table, MakeOrCutLine.class);
        columns.words(PriceText.unitType, 104, line -> NLS.bind(PriceText.mark, line.unit(), line.bond()));
        columns.numbers(PriceText.length, 74, line -> format.get().format(line.length()));
        columns.words(PriceText.now, 62, line -> line.stocked() ? PriceText.special : PriceText.cut);
        columns.numbers(PriceText.pieces, 58, line -> String.valueOf(line.pieces()));
        columns.numbers(PriceText.blocksSaved, 94, line -> String.valueOf(line.unitsSaved()));
        columns.numbers(PriceText.cutting, 88, line -> Figures.money(line.cutting()));
        columns.numbers(PriceText.making, 94, line -> Figures.money(line.making()));
        columns.words(PriceText.cheaper, 70, line -> line.makingPays() ? PriceText.special : PriceText.cut);
        columns.numbers(PriceText.paysFrom, 74, line -> line.breakEven().isPresent()
                ? String.valueOf(line.breakEven().getAsLong())
                : PriceText.never);
    }

    private void explain() {
        note.setText(table.getStructuredSelection().getFirstElement() instanceof MakeOrCutLine line ? line.note() : "");
    }

    void show(MakeOrCutReport report) {
        table.setInput(report.lines());
        note.setText(report.lines().isEmpty() ? PriceText.noSpecials : "");
    }
}
