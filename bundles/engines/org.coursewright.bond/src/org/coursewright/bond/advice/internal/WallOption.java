package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.Change;
import org.coursewright.bond.internal.LayingCost;
import org.coursewright.measure.Length;

/**
 * A wall with some of its dimensions changed.
 *
 * @param changes in the order to make them; none for the wall as planned
 * @param face the wall then
 * @param layout how it is laid then
 */
record WallOption(List<Change> changes, WallFace face, WallLayout layout) {

    WallOption {
        changes = List.copyOf(changes);
    }

    WallOption and(Change change, WallFace newFace, WallLayout newLayout) {
        List<Change> longer = new ArrayList<>(changes);
        longer.add(change);
        return new WallOption(longer, newFace, newLayout);
    }

    LayingCost cost() {
        return LayingCost.of(layout);
    }

    Length movement() {
        return changes.stream().map(change -> change.by().abs()).reduce(Length.ZERO, Length::plus);
    }
}
