package org.coursewright.estimate.ui.price;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.coursewright.core.cost.PriceLine;
import org.coursewright.estimate.ui.part.TypedProperty;
import org.coursewright.estimate.ui.part.TypedValue;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.project.Project;

/**
 * The rates of a project.
 *
 * @param project that has them
 * @param execute makes an edit, and says why not if it cannot be made
 */
record Rates(Project project, Function<ProjectCommand, Optional<String>> execute) {

    /** @return the rate that a line is priced by; none if its resource has none, or two */
    Optional<Rate> of(PriceLine line) {
        List<Rate> found = all(line);
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** @return the price of that rate, or of the one that is missing; none if there are two, since one must go first */
    Optional<TypedValue> price(PriceLine line) {
        List<Rate> found = all(line);
        if (found.isEmpty()) {
            return Optional.of(new MissingRate(project, line, execute));
        }
        return of(line).map(rate -> new TypedProperty(rate, EstimatePackage.Literals.RATE__PRICE, execute));
    }

    private List<Rate> all(PriceLine line) {
        return Optional.ofNullable(project.getEstimate()).stream().flatMap(estimate -> estimate.getRates().stream())
                .filter(
                        rate -> line.resource().resource().equals(rate.getMark()))
                .toList();
    }
}
