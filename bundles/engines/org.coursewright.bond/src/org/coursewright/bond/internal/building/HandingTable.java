package org.coursewright.bond.internal.building;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.function.IntToLongFunction;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.choice.CostTable;
import org.coursewright.bond.internal.handing.HandedWall;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.measure.Progress;

/**
 * What one wall costs for every handing of the meetings that are free to choose and matter to it. Until the wall has
 * been laid for a handing a bound stands in that costs no more than the layout: first what its runs cost alone, then
 * what they cost together with those above and below.
 */
final class HandingTable {

    private final WallFace wall;
    private final int[] scope;
    private final IntFunction<Handing> handings;
    private final LayingCost[] alone;
    private final LayingCost[] bounds;
    private final List<WallLayout> laid;
    private final int[] preferences;

    /**
     * @param scope the meetings, ascending
     * @param handings by index: the first meeting's choice is the highest bit, zero if the first of its rivals runs
     *        through on odd courses
     */
    HandingTable(WallFace wall, int[] scope, IntFunction<Handing> handings, RunsAlone runs) {
        this.wall = wall;
        this.scope = scope;
        this.handings = handings;
        int size = 1 << scope.length;
        alone = new LayingCost[size];
        bounds = new LayingCost[size];
        preferences = new int[size];
        laid = new ArrayList<>();
        for (int index = 0; index < size; index++) {
            Handing handing = handings.apply(index);
            alone[index] = runs.of(wall, handing);
            preferences[index] = alternates(handing) ? 0 : 1;
            laid.add(null);
        }
    }

    /** Whether the wall runs through at one end in odd courses and at the other in even ones, if it takes turns at both. */
    private boolean alternates(Handing handing) {
        List<Boolean> through = HandedWall.endMeetings(wall).stream()
                .filter(id -> handing.runsThrough(id, wall.mark(), true) || handing.runsThrough(id, wall.mark(), false))
                .map(id -> handing.runsThrough(id, wall.mark(), true)).toList();
        return through.size() < 2 || !through.get(0).equals(through.get(1));
    }

    /** Whether a better bound for these choices is wanted. */
    boolean isLoose(int[] chosen) {
        return alone.length > 1 && bounds[index(chosen)] == null;
    }

    /** Puts a better bound for these choices. */
    void tighten(int[] chosen, Layings layings, Progress progress) {
        int index = index(chosen);
        LayingCost runs = alone[index];
        bounds[index] = new LayingCost(runs.unfillable(), runs.violations(),
                layings.leastCuts(wall, handings.apply(index), progress));
    }

    /** Whether the wall has been laid for these choices. */
    boolean isLaid(int[] chosen) {
        return laid.get(index(chosen)) != null;
    }

    /** Lays the wall for these choices. */
    void lay(int[] chosen, Layings layings, Progress progress) {
        int index = index(chosen);
        WallLayout layout = layings.lay(wall, handings.apply(index), progress);
        laid.set(index, layout);
        bounds[index] = bound(layout, bound(index));
    }

    /** Lays the wall better for choices for which it has been laid. */
    void layBetter(int[] chosen, Layings layings, Progress progress) {
        int index = index(chosen);
        WallLayout layout = layings.layBetter(wall, handings.apply(index), progress);
        laid.set(index, layout);
        bounds[index] = bound(layout, bound(index));
    }

    private static LayingCost bound(WallLayout layout, LayingCost before) {
        return layout.optimal()
                ? LayingCost.of(layout)
                : new LayingCost(before.unfillable(), before.violations(),
                        Math.max(before.cuts(), layout.lowerBound()));
    }

    private LayingCost bound(int index) {
        return bounds[index] == null ? alone[index] : bounds[index];
    }

    WallLayout layout(int[] chosen) {
        return laid.get(index(chosen));
    }

    int size() {
        return alone.length;
    }

    /** What is known of every handing: the layout's cost or a bound on it. */
    CostTable costs(int preferenceWeight) {
        return table(index -> {
            WallLayout layout = laid.get(index);
            LayingCost cost = layout == null ? bound(index) : LayingCost.of(layout);
            return cost.packed(preferences[index] * preferenceWeight);
        });
    }

    /** What no layout goes below, for every handing. */
    CostTable bounds() {
        return table(index -> bound(index).packed(0));
    }

    /** Cuts that no layout goes below, however many laps are short. */
    CostTable leastCuts() {
        return table(index -> new LayingCost(0, 0, alone[index].cuts()).packed(0));
    }

    private CostTable table(IntToLongFunction cost) {
        int[] sizes = new int[scope.length];
        Arrays.fill(sizes, 2);
        long[] costs = new long[alone.length];
        Arrays.setAll(costs, cost);
        return new CostTable(scope, sizes, costs);
    }

    private int index(int[] chosen) {
        int index = 0;
        for (int meeting : scope) {
            index = index * 2 + chosen[meeting];
        }
        return index;
    }
}
