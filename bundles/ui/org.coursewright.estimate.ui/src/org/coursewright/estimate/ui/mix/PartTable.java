package org.coursewright.estimate.ui.mix;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.coursewright.core.cost.MixSheet;
import org.coursewright.estimate.ui.part.Columns;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.estimate.ui.part.TypedCell;
import org.coursewright.estimate.ui.part.TypedProperty;
import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;

/** What goes into a mix: parts as they are typed, the same by volume and by mass, and for a cubic metre. */
final class PartTable {

    private static final int DECIMALS = 3;

    private final TableViewer viewer;
    private final Function<ProjectCommand, Optional<String>> execute;
    private Optional<MixDesign> mix = Optional.empty();

    /**
     * @param parent of the table
     * @param execute makes an edit, and says why not if it cannot be made
     * @param refused told the reason, or none if the edit was made
     */
    PartTable(Composite parent, Function<ProjectCommand, Optional<String>> execute,
            Consumer<Optional<String>> refused) {
        this.execute = execute;
        viewer = new TableViewer(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        Columns<MixSheet.Part> columns = new Columns<>(viewer, MixSheet.Part.class);
        columns.words(MixText.material, 110, MixSheet.Part::material);
        columns.numbers(MixText.partsTyped, 70, part -> typed(part).map(TypedProperty::text).orElse(""))
                .setEditingSupport(new TypedCell<>(viewer, MixSheet.Part.class, this::typed, refused));
        columns.numbers(MixText.byVolume, 90, part -> number(part.byVolume()));
        columns.numbers(MixText.byMass, 90, part -> number(part.byMass()));
        columns.numbers(MixText.mass, 100, part -> Figures.number(part.mass(), 1));
        columns.numbers(MixText.loose, 100, part -> number(part.loose()));
        AccessibleName.give(viewer.getTable(), MixText.accessibleParts);
    }

    private static String number(BigDecimal value) {
        return Figures.number(value, DECIMALS);
    }

    private Optional<TypedProperty> typed(MixSheet.Part part) {
        return mix.stream().flatMap(each -> each.getParts().stream()).filter(each -> each.getMaterial() != null && part
                .material().equals(each.getMaterial().getMark())).findFirst().map(each -> new TypedProperty(each,
                        CataloguePackage.Literals.MIX_PART__PARTS, execute));
    }

    Table control() {
        return viewer.getTable();
    }

    void show(Optional<MixDesign> design, MixSheet sheet) {
        mix = design;
        viewer.setInput(sheet.parts());
    }
}
