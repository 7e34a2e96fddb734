package org.coursewright.core.bond;

import org.coursewright.bond.BondSolver;
import org.coursewright.core.derive.Derived;
import org.coursewright.core.derive.ModelRead;

/** The layout, for a {@link org.coursewright.core.derive.DerivationGraph}. */
public final class LayoutResults {

    private static final ModelRead<Translation> WALLS = new ModelRead<>("walls", Translation.class,
            BondTranslator::translate);

    /** How the building is laid. */
    public static final Derived<LayoutOutcome> LAYOUT = Derived.of("layout", LayoutOutcome.class, WALLS,
            (walls, progress) -> new BuildingLayout(BondSolver.standard()).lay(walls, progress));

    private LayoutResults() {
    }
}
