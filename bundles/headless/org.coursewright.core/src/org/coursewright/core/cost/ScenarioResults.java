package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.coursewright.core.bond.LayoutResults;
import org.coursewright.core.derive.Computation;
import org.coursewright.core.derive.Derived;
import org.coursewright.core.derive.Inputs;
import org.coursewright.core.derive.ModelRead;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;

/** Declares what scenarios cost: all of them, or one. Made of records, so that each scenario has one result in a graph. */
final class ScenarioResults {

    private ScenarioResults() {
    }

    /**
     * @param only mark of the only scenario wanted, empty for all
     * @return their prices, each laid by the bond engine
     */
    static Derived<ScenarioPrices> of(Optional<String> only) {
        ModelRead<ScenarioRead.Walls> walls = new ModelRead<>("walls of scenarios", ScenarioRead.Walls.class,
                new WallReader(only));
        ModelRead<ScenarioRead.All> reads = new ModelRead<>("scenarios", ScenarioRead.All.class, new AllReader(only));
        Derived<ScenarioRead.Layouts> layouts = Derived.of("layouts of scenarios", ScenarioRead.Layouts.class,
                List.of(walls, LayoutResults.LAYOUT), new Laying(walls));
        return Derived.of("prices of scenarios", ScenarioPrices.class, List.of(reads, layouts),
                new PricingOfEach(reads, layouts));
    }

    private record WallReader(Optional<String> only) implements Function<Project, ScenarioRead.Walls> {

        @Override
        public ScenarioRead.Walls apply(Project project) {
            return ScenarioRead.walls(project, only);
        }
    }

    private record AllReader(Optional<String> only) implements Function<Project, ScenarioRead.All> {

        @Override
        public ScenarioRead.All apply(Project project) {
            return ScenarioRead.all(project, only);
        }
    }

    private record Laying(ModelRead<ScenarioRead.Walls> walls) implements Computation<ScenarioRead.Layouts> {

        @Override
        public ScenarioRead.Layouts compute(Inputs inputs, Progress progress) {
            return inputs.of(walls).lay(inputs.of(LayoutResults.LAYOUT), progress);
        }
    }

    private record PricingOfEach(ModelRead<ScenarioRead.All> reads,
            Derived<ScenarioRead.Layouts> layouts) implements Computation<ScenarioPrices> {

        @Override
        public ScenarioPrices compute(Inputs inputs, Progress progress) {
            List<PriceOutcome> prices = new ArrayList<>();
            List<ScenarioRead> scenarios = inputs.of(reads).reads();
            for (int i = 0; i < scenarios.size(); i++) {
                prices.add(scenarios.get(i).price(inputs.of(layouts).layouts().get(i), progress));
            }
            return new ScenarioPrices(prices);
        }
    }
}
