package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.internal.refit.HandedBuilding;
import org.coursewright.measure.Progress;

/**
 * Chooses one option of every wall, for all walls together. What is chosen is laid, and where a layout comes to more than
 * the option was known to come to, the choice is made again, until it rests on layouts only.
 */
final class JointChoice {

    private final HandedBuilding building;
    private final List<List<WallOption>> options = new ArrayList<>();
    private final Terms terms;

    /** @param options of every wall, the first of each the wall as planned */
    JointChoice(HandedBuilding building, List<List<WallOption>> options, Terms terms) {
        this.building = building;
        options.forEach(each -> this.options.add(new ArrayList<>(each)));
        this.terms = terms;
    }

    /** @return one option of every wall, laid */
    List<WallOption> choose(Progress progress) {
        int[] chosen = chosen();
        while (lay(chosen, progress)) {
            chosen = chosen();
        }
        List<WallOption> choice = new ArrayList<>();
        for (int wall = 0; wall < chosen.length; wall++) {
            choice.add(options.get(wall).get(chosen[wall]));
        }
        return choice;
    }

    /** @return whether any of them had not been laid yet */
    private boolean lay(int[] chosen, Progress progress) {
        boolean any = false;
        for (int wall = 0; wall < chosen.length; wall++) {
            progress.checkCancelled();
            WallOption option = options.get(wall).get(chosen[wall]);
            if (!option.isLaid()) {
                options.get(wall).set(chosen[wall], option.laid(building, progress));
                any = true;
            }
        }
        return any;
    }

    private int[] chosen() {
        long step = terms.step().units();
        List<List<BudgetChoice.Offer>> offers = options.stream().map(wall -> wall.stream().map(
                option -> new BudgetChoice.Offer(Math.toIntExact(option.movement().units() / step), option.cost()))
                .toList()).toList();
        return new BudgetChoice(offers, terms.budget().units() / step).choose();
    }
}
