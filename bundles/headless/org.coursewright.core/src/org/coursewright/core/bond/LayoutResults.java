package org.coursewright.core.bond;

import java.util.List;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.core.derive.Derived;
import org.coursewright.core.derive.ModelRead;

/**
 * The layout, for a {@link org.coursewright.core.derive.DerivationGraph}. The solver is a result too, one that follows
 * from nothing: so each graph has its own, which remembers the walls of its project, and after an edit only what changed
 * is laid. What it remembers makes it quick and changes no answer.
 */
public final class LayoutResults {

    private static final ModelRead<Translation> WALLS = new ModelRead<>("walls", Translation.class,
            BondTranslator::translate);

    private static final Derived<BondSolver> SOLVER = Derived.of("layout solver", BondSolver.class, List.of(),
            (inputs, progress) -> BondSolver.remembering());

    /**
     * A first answer, soon after an edit: corners are handed as before and only walls that changed are laid. Its effort
     * says that it is one.
     */
    public static final Derived<LayoutOutcome> FIRST_LAYOUT = Derived.of("first layout", LayoutOutcome.class,
            List.of(WALLS, SOLVER), (inputs, progress) -> new BuildingLayout(inputs.of(SOLVER))
                    .first(inputs.of(WALLS), progress))
            .ahead();

    /** How the building is laid. */
    public static final Derived<LayoutOutcome> LAYOUT = Derived.of("layout", LayoutOutcome.class,
            List.of(WALLS, SOLVER), (inputs, progress) -> new BuildingLayout(inputs.of(SOLVER))
                    .lay(inputs.of(WALLS), progress));

    /** Who knows what small changes of dimensions spare; walls that the layout is known of are not laid again for it. */
    public static final Derived<BondAdvisor> ADVISOR = Derived.of("advisor", BondAdvisor.class, List.of(SOLVER),
            (inputs, progress) -> BondAdvisor.of(inputs.of(SOLVER)));

    private LayoutResults() {
    }
}
