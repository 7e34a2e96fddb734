package org.coursewright.bond.advice.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.coursewright.bond.advice.internal.BudgetChoice.Offer;
import org.coursewright.bond.internal.building.LayingCost;
import org.junit.jupiter.api.Test;

/** The choice within a budget against trying every choice. */
class BudgetChoiceTest {

    private record Sum(int steps, LayingCost cost) {

        boolean isBetterThan(Sum other) {
            int order = cost.compareTo(other.cost);
            return order < 0 || order == 0 && steps < other.steps;
        }
    }

    private static Sum sum(List<List<Offer>> walls, int[] chosen) {
        int steps = 0;
        LayingCost cost = LayingCost.NONE;
        for (int wall = 0; wall < chosen.length; wall++) {
            Offer offer = walls.get(wall).get(chosen[wall]);
            steps += offer.steps();
            cost = cost.plus(offer.cost());
        }
        return new Sum(steps, cost);
    }

    private static Sum best(List<List<Offer>> walls, int budget, int[] chosen, int wall) {
        if (wall == walls.size()) {
            return sum(walls, chosen);
        }
        Sum best = null;
        for (int index = 0; index < walls.get(wall).size(); index++) {
            chosen[wall] = index;
            Sum found = best(walls, budget, chosen, wall + 1);
            if (found != null && found.steps <= budget && (best == null || found.isBetterThan(best))) {
                best = found;
            }
        }
        return best;
    }

    @Test
    void choiceIsTheBestOfAllWithinTheBudget() {
        Random random = new Random(9);
        for (int round = 0; round < 200; round++) {
            List<List<Offer>> walls = new ArrayList<>();
            for (int wall = 0; wall < 1 + random.nextInt(4); wall++) {
                List<Offer> offers = new ArrayList<>(List.of(new Offer(0, new LayingCost(0, 2, 10))));
                for (int offer = 0; offer < random.nextInt(4); offer++) {
                    offers.add(new Offer(1 + random.nextInt(9),
                            new LayingCost(0, random.nextInt(3), random.nextInt(12))));
                }
                walls.add(offers);
            }
            int budget = random.nextInt(20);

            int[] chosen = new BudgetChoice(walls, budget).choose();

            assertThat(sum(walls, chosen)).isEqualTo(best(walls, budget, new int[walls.size()], 0));
        }
    }
}
