package org.coursewright.takeoff.mix;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.InvalidTakeoffException;
import org.coursewright.takeoff.Volume;

/**
 * One batch in whole bags and shovels: as much as the mixer holds. The first ingredient of the recipe leads: it is the
 * largest number of its container's steps that fits. The others follow, each rounded to its own container, half up.
 *
 * @param exact what the batch would take by the recipe, without rounding
 * @param lines in the order of the recipe
 */
public record BatchCard(MixAmounts exact, List<BatchLine> lines) {

    public BatchCard {
        Objects.requireNonNull(exact, "exact");
        lines = List.copyOf(lines);
    }

    /**
     * @param recipe what is mixed
     * @param mixer volume of mix that it holds
     * @param containers by the name of the ingredient, one for each
     * @return the card
     * @throws InvalidTakeoffException if an ingredient has no container, if not even one step of the first ingredient fits
     *         the mixer, or if another would be rounded to nothing
     */
    public static BatchCard of(MixRecipe recipe, Volume mixer, Map<String, Container> containers) {
        MixAmounts full = recipe.amountsFor(mixer);
        IngredientAmount lead = full.ingredients().get(0);
        Container leading = container(lead, containers);
        Fraction most = leading.count(lead);
        Fraction taken = leading.step().times(most.dividedBy(leading.step()).floor());
        require(taken.signum() > 0, "The mixer holds %s L of %s, less than with one step (%s) of a %s of %s: take a "
                + "smaller step.", mixer.in(UnitCode.LITRE).toDecimal(), recipe.name(), leading.step(), leading.name(),
                lead.ingredient().name());
        MixAmounts exact = full.times(taken.dividedBy(most));
        List<BatchLine> lines = new ArrayList<>();
        for (IngredientAmount amount : exact.ingredients()) {
            lines.add(line(amount, container(amount, containers)));
        }
        return new BatchCard(exact, lines);
    }

    /** @return what goes in: rounded amounts, the water that the recipe gives for them, and the volume they yield */
    public MixAmounts rounded() {
        List<MixPart> parts = lines.stream().map(BatchLine::amount).map(amount -> new MixPart(amount.ingredient(),
                amount.dryMass())).toList();
        MixRecipe recipe = exact.recipe();
        return new MixRecipe(recipe.name(), Measure.DRY_MASS, parts, recipe.water(), recipe.air()).oneRound();
    }

    /** @return number of batches for a volume, rounded up */
    public long batchesFor(Volume volume) {
        return volume.cubes().dividedBy(rounded().yield().cubes()).ceiling();
    }

    private static BatchLine line(IngredientAmount amount, Container container) {
        Fraction count = container.count(amount);
        Fraction steps = Fraction.of(count.dividedBy(container.step()).plus(Fraction.of(1, 2)).floor());
        require(steps.signum() > 0, "%s of a %s of %s would be rounded to nothing: take a smaller container.", count
                .toDecimal(), container.name(), amount.ingredient().name());
        return new BatchLine(amount.ingredient(), container, count, steps.times(container.step()));
    }

    private static Container container(IngredientAmount amount, Map<String, Container> containers) {
        String name = amount.ingredient().name();
        return Optional.ofNullable(containers.get(name)).orElseThrow(() -> new InvalidTakeoffException(
                "%s has no container: say what it is put into the mixer with.".formatted(name)));
    }
}
