package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.coursewright.bond.internal.building.LayingCost;

/**
 * Chooses one offer for every wall so that together they cost least and move no further than a budget: exactly, wall
 * after wall, for every movement the least cost. Of equally good choices the one that moves least is taken.
 */
final class BudgetChoice {

    /**
     * What a wall may come to.
     *
     * @param steps how far its dimensions move for it, in whole steps
     * @param cost what it costs then
     */
    record Offer(int steps, LayingCost cost) {
    }

    private final List<List<Offer>> walls;
    private final int budget;

    /**
     * @param walls the offers for every wall, one of them without movement
     * @param budget in steps
     */
    BudgetChoice(List<List<Offer>> walls, long budget) {
        this.walls = walls;
        long useful = walls.stream().mapToLong(offers -> offers.stream().mapToLong(Offer::steps).max().orElse(0)).sum();
        this.budget = Math.toIntExact(Math.min(useful, budget));
    }

    /** @return the index of the offer chosen for every wall */
    int[] choose() {
        LayingCost[] least = new LayingCost[budget + 1];
        Arrays.fill(least, LayingCost.NONE);
        List<int[]> choices = new ArrayList<>();
        for (List<Offer> offers : walls) {
            int[] choice = new int[budget + 1];
            LayingCost[] longer = new LayingCost[budget + 1];
            for (int room = 0; room <= budget; room++) {
                choice[room] = best(offers, room, least);
                Offer offer = offers.get(choice[room]);
                longer[room] = least[room - offer.steps()].plus(offer.cost());
            }
            choices.add(choice);
            least = longer;
        }
        return trace(choices, leastRoom(least));
    }

    private static int best(List<Offer> offers, int room, LayingCost[] before) {
        int best = -1;
        LayingCost least = LayingCost.NONE;
        for (int index = 0; index < offers.size(); index++) {
            Offer offer = offers.get(index);
            if (offer.steps() <= room) {
                LayingCost cost = before[room - offer.steps()].plus(offer.cost());
                if (best < 0 || cost.compareTo(least) < 0) {
                    best = index;
                    least = cost;
                }
            }
        }
        return best;
    }

    /** The least movement with which the least cost is reached. */
    private int leastRoom(LayingCost[] least) {
        int room = budget;
        while (room > 0 && least[room - 1].equals(least[budget])) {
            room--;
        }
        return room;
    }

    private int[] trace(List<int[]> choices, int from) {
        int[] chosen = new int[choices.size()];
        int room = from;
        for (int wall = chosen.length - 1; wall >= 0; wall--) {
            chosen[wall] = choices.get(wall)[room];
            room -= walls.get(wall).get(chosen[wall]).steps();
        }
        return chosen;
    }
}
