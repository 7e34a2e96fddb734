package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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
 * @param layout how it is laid then, if it has been laid
 */
record WallOption(List<Change> changes, WallFace face, LayingCost cost, Optional<WallLayout> layout) {

    /** The cheapest first, of these those that move least. */
    static final Comparator<WallOption> ORDER = Comparator.comparing(WallOption::cost)
            .thenComparing(WallOption::movement);

    WallOption {
        changes = List.copyOf(changes);
    }

    static WallOption planned(WallFace wall, WallLayout layout) {
        return new WallOption(List.of(), wall, LayingCost.of(layout), Optional.of(layout));
    }

    /** The same wall with one dimension more changed. */
    WallOption and(Adjustable adjustable, Point point) {
        List<Change> longer = new ArrayList<>(changes);
        longer.add(new Change(adjustable, point.change()));
        return new WallOption(longer, point.face(), point.cost(), point.layout());
    }

    /** The same option, laid; not with all care yet, for it may not be chosen after all. */
    WallOption laid(HandedBuilding building, Progress progress) {
        WallLayout laid = building.layFirst(face, progress);
        return new WallOption(changes, face, LayingCost.of(laid), Optional.of(laid));
    }

    boolean isLaid() {
        return layout.isPresent();
    }

    boolean changes(Adjustable adjustable) {
        return changes.stream().anyMatch(change -> change.adjustable().equals(adjustable));
    }

    Length movement() {
        return changes.stream().map(change -> change.by().abs()).reduce(Length.ZERO, Length::plus);
    }
}
