package org.coursewright.estimate.ui.mix;

import java.math.BigDecimal;
import java.util.List;

import org.coursewright.core.cost.MixSheet;
import org.coursewright.estimate.ui.part.Columns;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;

/** What goes into the mixer at hand, in whole steps of packs, and how much water. */
final class BatchCard {

    private final Label yield;
    private final Label water;
    private final TableViewer viewer;

    BatchCard(Composite parent) {
        Group group = new Group(parent, SWT.NONE);
        group.setText(MixText.batch);
        GridLayoutFactory.swtDefaults().applyTo(group);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        yield = line(group);
        viewer = new TableViewer(group, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        Columns<MixSheet.BatchPart> columns = new Columns<>(viewer, MixSheet.BatchPart.class);
        columns.words(MixText.material, 110, MixSheet.BatchPart::material);
        columns.numbers(MixText.rounded, 80, part -> plain(part.rounded()));
        columns.words(MixText.container, 150, MixSheet.BatchPart::container);
        columns.numbers(MixText.exact, 90, part -> Figures.number(part.exact(), 3));
        columns.numbers(MixText.deviation, 80, part -> Figures.percent(part.deviation()));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(viewer.getTable());
        AccessibleName.give(viewer.getTable(), MixText.accessibleBatch);
        water = line(group);
    }

    private static Label line(Composite group) {
        Label label = new Label(group, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private static String plain(BigDecimal value) {
        return Figures.number(value, value.stripTrailingZeros().scale() > 0 ? 1 : 0);
    }

    void show(MixSheet sheet) {
        yield.setText(
                sheet.batch().map(batch -> NLS.bind(MixText.batchOf, batch.mixer(), litres(batch.litres()))).orElse(
                        NLS.bind(MixText.noBatch, sheet.remark())));
        viewer.setInput(sheet.batch().map(MixSheet.Batch::lines).orElse(List.of()));
        water.setText(sheet.batch().map(BatchCard::water).orElse(""));
    }

    private static String water(MixSheet.Batch batch) {
        return batch.mostWater().signum() < 0
                ? MixText.tooWet
                : NLS.bind(MixText.toAdd, new Object[]{litres(batch.water()), litres(batch.leastWater().max(
                        BigDecimal.ZERO)), litres(batch.mostWater())});
    }

    private static String litres(BigDecimal litres) {
        return Figures.number(litres, 1);
    }
}
