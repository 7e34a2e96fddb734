package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.bond.BondSolver;
import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.Translation;
import org.coursewright.core.takeoff.Measurement;
import org.coursewright.core.takeoff.ProjectBrief;
import org.coursewright.measure.Progress;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.project.Project;

/**
 * All that a scenario is laid and priced by, copied out of the project.
 *
 * @param name of the scenario
 * @param brief what the take-off needs
 * @param cost what the price rests on
 */
record ScenarioRead(ScenarioName name, ProjectBrief brief, CostBrief cost) {

    ScenarioRead {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(brief, "brief");
        Objects.requireNonNull(cost, "cost");
    }

    /**
     * Several of them.
     *
     * @param reads in the order of the project
     */
    record All(List<ScenarioRead> reads) {

        All {
            reads = List.copyOf(reads);
        }
    }

    /**
     * Their layouts.
     *
     * @param layouts in the same order
     */
    record Layouts(List<LayoutOutcome> layouts) {

        Layouts {
            layouts = List.copyOf(layouts);
        }
    }

    /**
     * What the bond engine is asked for each.
     *
     * @param walls in the same order
     */
    record Walls(List<Translation> walls) {

        Walls {
            walls = List.copyOf(walls);
        }

        /** Lays each; what is to be laid as planned is not laid again. */
        Layouts lay(LayoutOutcome asPlanned, Progress progress) {
            List<LayoutOutcome> layouts = new ArrayList<>();
            for (Translation each : walls) {
                progress.checkCancelled();
                boolean same = each.request().equals(asPlanned.request());
                layouts.add(same ? asPlanned : new BuildingLayout(BondSolver.standard()).lay(each, progress));
            }
            return new Layouts(layouts);
        }
    }

    static Walls walls(Project project, Optional<String> only) {
        return new Walls(
                chosen(project, only).stream().map(scenario -> BondTranslator.translate(ScenarioCopy.of(project,
                        scenario))).toList());
    }

    static All all(Project project, Optional<String> only) {
        return new All(chosen(project, only).stream().map(scenario -> of(scenario, ScenarioCopy.of(project, scenario)))
                .toList());
    }

    private static ScenarioRead of(Scenario scenario, Project copy) {
        return new ScenarioRead(
                new ScenarioName(scenario.getMark(), Optional.ofNullable(scenario.getNote()).orElse("")),
                ProjectBrief.of(copy), CostReader.read(copy));
    }

    private static List<Scenario> chosen(Project project, Optional<String> only) {
        return ScenarioCopy.scenarios(project).stream().filter(scenario -> only.isEmpty() || only.get().equals(scenario
                .getMark())).toList();
    }

    PriceOutcome price(LayoutOutcome layout, Progress progress) {
        Measurement measurement = Measurement.of(brief, layout, progress);
        PriceOutcome price = new Pricing(cost).outcome(name, ResourceTakeoff.of(measurement, cost), measurement
                .assumptions(), measurement.findings());
        return new RangeEstimate(cost, price).priced(progress);
    }
}
