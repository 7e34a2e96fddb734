package org.coursewright.estimate.ui.price;

import java.util.Optional;
import java.util.function.Function;

import org.coursewright.core.cost.PriceLine;
import org.coursewright.core.cost.Work;
import org.coursewright.estimate.ui.part.TypedValue;
import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.model.edit.command.AddRateCommand;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.RateKind;
import org.coursewright.model.project.Project;

/**
 * The rate that a line lacks: typing a price adds it to the project, for one of the line's unit.
 *
 * @param project to be added to
 * @param line that lacks it
 * @param execute makes an edit, and says why not if it cannot be made
 */
record MissingRate(Project project, PriceLine line, Function<ProjectCommand, Optional<String>> execute)
        implements
            TypedValue {

    @Override
    public String text() {
        return "";
    }

    @Override
    public Optional<String> set(String typed) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        try {
            return execute.apply(new AddRateCommand(project, rate(Money.fromStored(typed.strip()))));
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    private Rate rate(Money price) {
        Rate rate = EstimateFactory.eINSTANCE.createRate();
        rate.setMark(line.resource().resource());
        rate.setPrice(price);
        rate.setUnitCode(quantity().unitCode());
        rate.setKind(kind());
        return rate;
    }

    private RateKind kind() {
        if (line.resource().work() == Work.HAULAGE) {
            return RateKind.HAULAGE;
        }
        boolean machine = Optional.ofNullable(project.getCatalogue()).stream().flatMap(catalogue -> catalogue.getPlant()
                .stream()).anyMatch(plant -> line.resource().resource().equals(plant.getMark()));
        if (machine) {
            return RateKind.PLANT;
        }
        boolean hours = quantity().unit().filter(unit -> unit == UnitCode.HOUR).isPresent();
        return hours ? RateKind.LABOUR : RateKind.MATERIAL;
    }

    private Quantity quantity() {
        return line.resource().amount().quantity();
    }
}
