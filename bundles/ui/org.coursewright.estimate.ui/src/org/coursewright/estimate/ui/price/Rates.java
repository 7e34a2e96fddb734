package org.coursewright.estimate.ui.price;

import java.util.Optional;
import java.util.function.Function;

import org.coursewright.core.cost.PriceLine;
import org.coursewright.model.edit.command.ProjectCommand;
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
        var found = Optional.ofNullable(project.getEstimate()).stream().flatMap(estimate -> estimate.getRates()
                .stream()).filter(rate -> line.resource().resource().equals(rate.getMark())).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }
}
