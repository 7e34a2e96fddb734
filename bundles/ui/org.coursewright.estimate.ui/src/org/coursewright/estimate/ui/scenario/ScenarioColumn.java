package org.coursewright.estimate.ui.scenario;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.core.cost.PriceComparison;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.measure.Money;
import org.eclipse.osgi.util.NLS;

/**
 * The building as planned or in one scenario, as it stands beside the others.
 *
 * @param mark of the scenario
 * @param note what is different in it, may be empty
 * @param price the last there was, empty before the first
 * @param state whether that is still true
 */
record ScenarioColumn(String mark, String note, Optional<PriceOutcome> price, State state) {

    /** How far the price is. */
    enum State {
        /** It is what the project comes to now. */
        THERE,
        /** It is being worked out. */
        COMING,
        /** There is none for the project as it is. */
        FAILED
    }

    ScenarioColumn {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(note, "note");
        Objects.requireNonNull(price, "price");
        Objects.requireNonNull(state, "state");
    }

    boolean isThere() {
        return state == State.THERE && price.isPresent();
    }

    /** The mark; it says so if some line has no price. */
    String title() {
        return price.filter(each -> !each.isComplete()).map(each -> NLS.bind(ScenarioText.incomplete, mark)).orElse(
                mark);
    }

    /** What stands where there is no figure. */
    String noFigure() {
        return isComing() ? ScenarioText.coming : ScenarioText.none;
    }

    /** What stands where a difference is wanted. */
    String noDifference(ScenarioColumn planned) {
        return planned.isComing() ? planned.noFigure() : noFigure();
    }

    private boolean isComing() {
        return state == State.COMING;
    }

    /** How much more it is than planned; only where both are true, since an old figure says nothing beside a new one. */
    Optional<Money> moreThan(ScenarioColumn planned) {
        return isThere() && planned.isThere()
                ? planned.price.flatMap(one -> price.map(other -> PriceComparison.of(one, List.of(
                        other)).differences().get(1)))
                : Optional.empty();
    }
}
