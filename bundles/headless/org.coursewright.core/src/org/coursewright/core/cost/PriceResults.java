package org.coursewright.core.cost;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.derive.Derived;
import org.coursewright.core.derive.ModelRead;
import org.coursewright.core.takeoff.TakeoffResults;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.project.Project;

/** The results about cost, for a {@link org.coursewright.core.derive.DerivationGraph}. */
public final class PriceResults {

    /** What the building is called as the project has it, among scenarios. */
    public static final String AS_PLANNED = ScenarioName.AS_PLANNED.mark();

    private static final ModelRead<CostBrief> BRIEF = new ModelRead<>("cost brief", CostBrief.class, CostReader::read);

    /** All resources that the building takes. */
    public static final Derived<ResourceTakeoff> RESOURCES = Derived.of("resources", ResourceTakeoff.class, List.of(
            BRIEF, TakeoffResults.MEASUREMENT),
            (inputs, progress) -> ResourceTakeoff.of(inputs.of(
                    TakeoffResults.MEASUREMENT), inputs.of(BRIEF)));

    /** Everything that the building takes, in one table. */
    public static final Derived<QuantityTable> QUANTITIES = Derived.of("table of quantities", QuantityTable.class, List
            .of(TakeoffResults.TAKEOFF, RESOURCES),
            (inputs, progress) -> QuantityTable.of(inputs.of(
                    TakeoffResults.TAKEOFF), inputs.of(RESOURCES)));

    /** What the building costs as planned, without its range: fast enough to follow every edit. */
    public static final Derived<PriceOutcome> PRICE = Derived.of("price", PriceOutcome.class, List.of(BRIEF,
            TakeoffResults.MEASUREMENT, RESOURCES),
            (inputs, progress) -> new Pricing(inputs.of(BRIEF)).outcome(
                    ScenarioName.AS_PLANNED, inputs.of(RESOURCES), inputs.of(TakeoffResults.MEASUREMENT).assumptions(),
                    inputs.of(TakeoffResults.MEASUREMENT).findings()));

    /** What the building costs as planned, with its range by simulation. */
    public static final Derived<PriceOutcome> RANGE = Derived.of("range of the price", PriceOutcome.class,
            List.of(BRIEF,
                    PRICE),
            (inputs, progress) -> new RangeEstimate(inputs.of(BRIEF), inputs.of(PRICE)).priced(progress));

    /** The building as planned beside every scenario, each laid by the bond engine. */
    public static final Derived<PriceComparison> COMPARISON = comparison(Optional.empty());

    /** Whether to have specials or to cut them; not part of {@link #PRICE}, since it nests every length anew. */
    public static final Derived<MakeOrCutReport> MAKE_OR_CUT = Derived.of("make or cut", MakeOrCutReport.class, List.of(
            BRIEF, TakeoffResults.MEASUREMENT),
            (inputs, progress) -> MakeOrCutReport.of(inputs.of(
                    TakeoffResults.MEASUREMENT), inputs.of(BRIEF), progress));

    private static final ModelRead<MixSheets> MIXES_READ = new ModelRead<>("mixes as read", MixSheets.class,
            MixSheets::of);

    /** The mixes of the project, worked out; nothing is laid for them. */
    public static final Derived<MixSheets> MIXES = Derived.of("mixes", MixSheets.class, MIXES_READ, (mixes,
            progress) -> mixes);

    /** What single pieces cost, without anything being laid. */
    public static final ModelRead<PieceCostBook> PIECE_COSTS = new ModelRead<>("costs of pieces", PieceCostBook.class,
            PieceCostBook::of);

    private PriceResults() {
    }

    /**
     * @param project a project, not null
     * @return marks of its scenarios, in their order
     */
    public static List<String> scenarios(Project project) {
        return ScenarioCopy.scenarios(project).stream().map(Scenario::getMark).toList();
    }

    /**
     * The building as planned beside one scenario.
     *
     * @param scenario its mark
     * @return the result to pull; with an unknown mark it has the building as planned only
     */
    public static Derived<PriceComparison> comparison(String scenario) {
        return comparison(Optional.of(scenario));
    }

    /**
     * One scenario by itself, for those who show each as soon as it is there.
     *
     * @param mark of the scenario
     * @return its price, declared anew for each call and yet one result; none with an unknown mark, several if scenarios
     *         share the mark
     */
    public static Derived<ScenarioPrices> scenario(String mark) {
        return ScenarioResults.of(Optional.of(mark));
    }

    private static Derived<PriceComparison> comparison(Optional<String> only) {
        Derived<ScenarioPrices> scenarios = ScenarioResults.of(only);
        return Derived.of("comparison of scenarios", PriceComparison.class, List.of(RANGE, scenarios),
                (inputs, progress) -> PriceComparison.of(inputs.of(RANGE), inputs.of(scenarios).prices()));
    }
}
