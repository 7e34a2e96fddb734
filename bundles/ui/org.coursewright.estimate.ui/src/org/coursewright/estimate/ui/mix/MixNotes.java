package org.coursewright.estimate.ui.mix;

import java.math.BigDecimal;

import org.coursewright.core.cost.MixSheet;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.measure.LengthFormat;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;

/** What one block takes, and whether the largest grain goes into the joint. */
final class MixNotes {

    private final Label block;
    private final Label grain;

    MixNotes(Composite parent) {
        block = note(parent, MixText.block);
        grain = note(parent, MixText.grain);
    }

    private static Label note(Composite parent, String title) {
        Group group = new Group(parent, SWT.NONE);
        group.setText(title);
        GridLayoutFactory.swtDefaults().applyTo(group);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        Label label = new Label(group, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(label);
        return label;
    }

    void show(MixSheet sheet, LengthFormat format) {
        block.setText(sheet.block().map(MixNotes::words).orElse(""));
        block.getParent().setVisible(sheet.block().isPresent());
        ((GridData) block.getParent().getLayoutData()).exclude = sheet.block().isEmpty();
        grain.setText(sheet.grain().map(each -> NLS.bind(each.fits() ? MixText.grainFits : MixText.grainTooLarge, format
                .format(each.largest()), format.format(each.joint()))).orElse(MixText.noGrain));
    }

    private static String words(MixSheet.Block one) {
        String words = NLS.bind(MixText.blockOf, new Object[]{one.unit(), number(one.dryMass()), number(one.loose())})
                + "\n" + NLS.bind(MixText.blockStabiliser, new Object[]{number(one.stabiliser()), Figures.percent(one
                        .ofSoil()), Figures.percent(one.ofTotal())})
                + "\n" + NLS.bind(MixText.blockWater, new Object[]{
                        number(one.water()), number(one.leastWater()), number(one.mostWater())});
        return words + one.fromPack().map(blocks -> "\n" + NLS.bind(MixText.blocksFromPack, Figures.number(blocks, 1)))
                .orElse("");
    }

    private static String number(BigDecimal value) {
        return Figures.number(value, 2);
    }
}
