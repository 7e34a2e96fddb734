package org.coursewright.bond.advice;

import java.util.List;
import java.util.Objects;

import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;

/**
 * One change, made after those proposed before it.
 *
 * @param adjustable what changes
 * @param from its value in the plan
 * @param to its new value
 * @param before the walls that it changes, before the change: its wall, or those that a wall meets that moves
 * @param after the same walls in the same order after the change; laid, not estimated, though in a hurry if further changes of
 *        the wall follow
 */
public record Proposal(Adjustable adjustable, Length from, Length to, List<WallLayout> before,
        List<WallLayout> after) {

    public Proposal {
        Objects.requireNonNull(adjustable, "adjustable");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /** @return how far the dimension changes, zero or more */
    public Length movement() {
        return to.minus(from).abs();
    }

    /** @return cut pieces of these walls before the change */
    public int cutsBefore() {
        return cuts(before);
    }

    /** @return cut pieces of these walls after the change */
    public int cutsAfter() {
        return cuts(after);
    }

    /** @return short laps of these walls before the change */
    public int lapsBefore() {
        return laps(before);
    }

    /** @return short laps of these walls after the change */
    public int lapsAfter() {
        return laps(after);
    }

    private static int cuts(List<WallLayout> walls) {
        return walls.stream().mapToInt(WallLayout::cutPieces).sum();
    }

    private static int laps(List<WallLayout> walls) {
        return walls.stream().mapToInt(WallLayout::lapViolations).sum();
    }
}
