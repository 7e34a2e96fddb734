package org.coursewright.bond.internal.building;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.choice.CostNetwork;
import org.coursewright.bond.internal.choice.CostTable;
import org.coursewright.bond.internal.handing.FreeMeetings;
import org.coursewright.measure.Progress;

/**
 * Hands the meetings of a building so that all walls together have the fewest runs left unfilled, then the fewest short
 * laps, then the fewest cuts.
 *
 * <p>Every meeting that nobody has pinned is a choice of two, every wall a table of costs by the choices at its ends and
 * tees, and elimination finds the choices with the least sum. Before a wall is laid, a bound stands in its table; walls
 * are laid only for the choices that come out best, and the choice is made again until it rests on layouts alone. As a
 * layout never costs less than the bound it replaces, no other choice can then be better.
 */
public final class HandingSearch {

    /** What a wall weighs that runs through at both ends in the same courses, against one unusual meeting. */
    private static final int ALTERNATING = 4;

    private final FreeMeetings meetings;
    private final Layings layings;
    private final List<HandingTable> tables = new ArrayList<>();
    private final int most;
    private int laid;
    private boolean exact = true;

    /** @param layings what lays the walls, and remembers how */
    public HandingSearch(BondRequest request, Layings layings) {
        this.layings = layings;
        meetings = new FreeMeetings(request);
        RunsAlone runs = layings.runs();
        for (WallFace wall : request.walls()) {
            int[] scope = meetings.of(wall);
            tables.add(new HandingTable(wall, scope, index -> meetings.handing(wall, scope, index), runs));
        }
        most = tables.stream().mapToInt(HandingTable::size).sum();
    }

    /** The building handed and laid as well as could be found. */
    public Handed search(Progress progress) {
        int[] chosen = choose(progress);
        while (tighten(chosen, progress) || lay(chosen, progress)) {
            chosen = choose(progress);
        }
        layBetter(chosen, progress);
        LayingCost cost = LayingCost.NONE;
        List<WallLayout> walls = new ArrayList<>();
        for (HandingTable table : tables) {
            WallLayout layout = table.layout(chosen);
            walls.add(layout);
            cost = cost.plus(LayingCost.of(layout));
        }
        LayingCost bound = bound(cost, progress);
        boolean optimal = exact && meetings.areAllFree() && bound.equals(cost);
        return new Handed(meetings.handing(chosen), walls, optimal, Math.toIntExact(bound.cuts()));
    }

    /** What no layout goes below; where laps may be avoidable, cuts are bounded whatever the laps. */
    private LayingCost bound(LayingCost cost, Progress progress) {
        LayingCost bound = least(HandingTable::bounds, progress);
        boolean asFewLaps = bound.unfillable() == cost.unfillable() && bound.violations() == cost.violations();
        return asFewLaps ? bound : least(HandingTable::leastCuts, progress);
    }

    private LayingCost least(Function<HandingTable, CostTable> costs, Progress progress) {
        CostNetwork network = new CostNetwork(new long[meetings.count()][2]);
        tables.forEach(table -> network.add(costs.apply(table)));
        int[] chosen = network.solve(progress);
        long sum = 0;
        for (HandingTable table : tables) {
            CostTable bounds = costs.apply(table);
            sum += network.isExact() ? bounds.at(chosen) : bounds.least();
        }
        return LayingCost.unpacked(sum);
    }

    /** Ties go to walls that run through at one end in odd courses and at the other in even ones, then to the usual. */
    private int[] choose(Progress progress) {
        CostNetwork network = new CostNetwork(meetings.preferences());
        tables.forEach(table -> network.add(table.costs(ALTERNATING)));
        int[] chosen = network.solve(progress);
        exact &= network.isExact();
        return chosen;
    }

    private boolean tighten(int[] chosen, Progress progress) {
        return withEach(table -> table.isLoose(chosen), table -> table.tighten(chosen, layings, progress));
    }

    private boolean lay(int[] chosen, Progress progress) {
        return withEach(table -> !table.isLaid(chosen), table -> {
            table.lay(chosen, layings, progress);
            tell(progress);
        });
    }

    /** Only for the handing chosen, as it takes longer. */
    private void layBetter(int[] chosen, Progress progress) {
        withEach(table -> !table.layout(chosen).optimal(), table -> table.layBetter(chosen, layings, progress));
    }

    /**
     * Walls do not depend on one another, so they are worked on side by side; what comes out is the same.
     *
     * @return whether any table is wanted
     */
    private boolean withEach(Predicate<HandingTable> wanted, Consumer<HandingTable> work) {
        List<HandingTable> all = tables.stream().filter(wanted).toList();
        if (all.size() == 1) {
            work.accept(all.get(0));
        } else {
            all.parallelStream().forEach(work);
        }
        return !all.isEmpty();
    }

    private synchronized void tell(Progress progress) {
        laid++;
        progress.done((double) laid / most);
    }
}
