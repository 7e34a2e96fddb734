package org.coursewright.estimate.ui.mix;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.coursewright.estimate.ui.part.TypedField;
import org.coursewright.estimate.ui.part.TypedProperty;
import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.edit.command.ProjectCommand;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;

/** How much water a mix may have, and how much stabiliser. */
final class WaterFields {

    private static final int COLUMNS = 8;

    private final Function<ProjectCommand, Optional<String>> execute;
    private final Consumer<Optional<String>> refused;
    private final List<TypedField> fields;
    private Optional<MixDesign> mix = Optional.empty();

    WaterFields(Composite parent, Function<ProjectCommand, Optional<String>> execute,
            Consumer<Optional<String>> refused) {
        this.execute = execute;
        this.refused = refused;
        Group group = new Group(parent, SWT.NONE);
        group.setText(MixText.waterShares);
        GridLayoutFactory.swtDefaults().numColumns(COLUMNS / 2).spacing(8, 4).applyTo(group);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        fields = List.of(field(group, MixText.leastWater, CataloguePackage.Literals.MIX_DESIGN__LEAST_WATER_SHARE),
                field(group, MixText.water, CataloguePackage.Literals.MIX_DESIGN__WATER_SHARE), field(group,
                        MixText.mostWater, CataloguePackage.Literals.MIX_DESIGN__MOST_WATER_SHARE),
                field(group,
                        MixText.stabiliser, CataloguePackage.Literals.MIX_DESIGN__STABILISER_SHARE));
    }

    private TypedField field(Composite group, String label, EAttribute share) {
        return new TypedField(group, label, () -> mix.map(each -> new TypedProperty(each, share, execute)), refused);
    }

    void show(Optional<MixDesign> design) {
        mix = design;
        fields.forEach(TypedField::refresh);
    }
}
