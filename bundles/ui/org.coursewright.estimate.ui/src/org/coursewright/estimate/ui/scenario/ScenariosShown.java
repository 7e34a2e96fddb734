package org.coursewright.estimate.ui.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.cost.ScenarioPrices;
import org.coursewright.estimate.ui.part.ShownResult;
import org.coursewright.estimate.ui.scenario.ScenarioColumn.State;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.project.Project;

/** The building as planned and the scenarios that the project has, each with its price as soon as that is there. */
final class ScenariosShown {

    private final ShownResult<PriceOutcome> planned;
    private final Function<String, ShownResult<ScenarioPrices>> show;
    private final Consumer<ShownResult<?>> hide;
    private final Map<String, ShownResult<ScenarioPrices>> shown = new LinkedHashMap<>();

    /**
     * @param planned the building as the project has it
     * @param show has a scenario worked out from now on
     * @param hide has one worked out no longer
     */
    ScenariosShown(ShownResult<PriceOutcome> planned, Function<String, ShownResult<ScenarioPrices>> show,
            Consumer<ShownResult<?>> hide) {
        this.planned = planned;
        this.show = show;
        this.hide = hide;
    }

    /** Has worked out what the project has, and nothing else. */
    void follow(Project project) {
        List<String> marks = PriceResults.scenarios(project);
        List<String> gone = shown.keySet().stream().filter(mark -> !marks.contains(mark)).toList();
        gone.forEach(mark -> hide.accept(shown.remove(mark)));
        marks.forEach(mark -> shown.computeIfAbsent(mark, show));
    }

    /** The building as planned first, then the scenarios in the order of the project. */
    List<ScenarioColumn> columns(Project project) {
        List<ScenarioColumn> columns = new ArrayList<>(List.of(column(PriceResults.AS_PLANNED, "", planned,
                planned.last())));
        PriceResults.scenarios(project).stream().distinct().filter(shown::containsKey).forEach(mark -> {
            ShownResult<ScenarioPrices> result = shown.get(mark);
            columns.add(column(mark, note(project, mark), result, result.last().flatMap(each -> each.prices().stream()
                    .findFirst())));
        });
        return columns;
    }

    private static ScenarioColumn column(String mark, String note, ShownResult<?> result,
            Optional<PriceOutcome> price) {
        State state = result.failure().isPresent() ? State.FAILED : result.isStale() ? State.COMING : State.THERE;
        return new ScenarioColumn(mark, note, price, state);
    }

    private static String note(Project project, String mark) {
        return project.getEstimate().getScenarios().stream().filter(each -> mark.equals(each.getMark())).map(
                Scenario::getNote).filter(Objects::nonNull).findFirst().orElse("");
    }
}
