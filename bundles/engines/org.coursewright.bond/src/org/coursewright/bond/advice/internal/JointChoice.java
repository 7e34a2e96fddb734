package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.bond.internal.refit.HandedBuilding;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/**
 * Chooses one option of every wall, for all walls together. Options are trusted to come to what they are known to come to,
 * until the building has been laid so and comes to more: then those of the walls to blame are laid before they are chosen.
 */
final class JointChoice {

    private final HandedBuilding building;
    private final List<List<WallOption>> options = new ArrayList<>();
    private final Terms terms;
    private final Set<Integer> doubted = new HashSet<>();
    private int[] chosen;

    /** @param options of every wall, the first of each the wall as planned */
    JointChoice(HandedBuilding building, List<List<WallOption>> options, Terms terms) {
        this.building = building;
        options.forEach(each -> this.options.add(new ArrayList<>(each)));
        this.terms = terms;
        chosen = chosen();
    }

    /** @return one option of every wall */
    List<WallOption> walls() {
        return IntStream.range(0, chosen.length).mapToObj(this::option).toList();
    }

    LayingCost cost() {
        return walls().stream().map(WallOption::cost).reduce(LayingCost.NONE, LayingCost::plus);
    }

    Length movement() {
        return walls().stream().map(WallOption::movement).reduce(Length.ZERO, Length::plus);
    }

    /**
     * Chooses again if walls come to more than what was chosen is known to come to, but for those that do because their
     * corners are handed otherwise: that is for the best of all.
     *
     * @param laid how the building is laid with what was chosen
     * @return whether an option turned out to come to more
     */
    boolean isCorrected(List<WallLayout> laid, Progress progress) {
        IntStream.range(0, chosen.length)
                .filter(wall -> LayingCost.of(laid.get(wall)).compareTo(option(wall).cost()) > 0).forEach(doubted::add);
        boolean corrected = false;
        while (layDoubted(progress)) {
            corrected = true;
            chosen = chosen();
        }
        return corrected;
    }

    /** @return whether any of the chosen ones comes to more than it was known to */
    private boolean layDoubted(Progress progress) {
        boolean more = false;
        for (int wall : doubted) {
            progress.checkCancelled();
            WallOption option = option(wall);
            if (!option.isLaid()) {
                WallOption laid = option.laid(building, progress);
                options.get(wall).set(chosen[wall], laid);
                more |= laid.cost().compareTo(option.cost()) > 0;
            }
        }
        return more;
    }

    private WallOption option(int wall) {
        return options.get(wall).get(chosen[wall]);
    }

    private int[] chosen() {
        long step = terms.step().units();
        List<List<BudgetChoice.Offer>> offers = options.stream().map(wall -> wall.stream().map(
                option -> new BudgetChoice.Offer(Math.toIntExact(option.movement().units() / step), option.cost()))
                .toList()).toList();
        return new BudgetChoice(offers, terms.budget().units() / step).choose();
    }
}
