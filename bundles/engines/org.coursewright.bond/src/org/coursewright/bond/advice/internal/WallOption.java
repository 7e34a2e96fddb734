package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Change;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.bond.internal.refit.HandedBuilding;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/**
 * A wall with some of its dimensions changed.
 *
 * @param changes in the order to make them; none for the wall as planned
 * @param face the wall then
 * @param cost what a layout of it comes to that is known
 * @param isLaid whether laying it gives that layout
 */
record WallOption(List<Change> changes, WallFace face, LayingCost cost, boolean isLaid) {

    /** The cheapest first, of these those that move least. */
    static final Comparator<WallOption> ORDER = Comparator.comparing(WallOption::cost)
            .thenComparing(WallOption::movement);

    WallOption {
        changes = List.copyOf(changes);
    }

    static WallOption planned(WallFace wall, WallLayout layout) {
        return new WallOption(List.of(), wall, LayingCost.of(layout), true);
    }

    /** The same wall with one dimension more changed. */
    WallOption and(Adjustable adjustable, Point point) {
        List<Change> longer = new ArrayList<>(changes);
        longer.add(new Change(adjustable, point.change()));
        return new WallOption(longer, point.face(), point.cost(), false);
    }

    /** The same option, laid; not with all care, for it may not be chosen then. */
    WallOption laid(HandedBuilding building, Progress progress) {
        return new WallOption(changes, face, LayingCost.of(building.layAsKnown(face, progress)), true);
    }

    boolean changes(Adjustable adjustable) {
        return changes.stream().anyMatch(change -> change.adjustable().equals(adjustable));
    }

    Length movement() {
        return changes.stream().map(change -> change.by().abs()).reduce(Length.ZERO, Length::plus);
    }
}
