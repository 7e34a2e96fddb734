package org.coursewright.bond.advice.internal;

import java.util.List;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.AdviceRequest;
import org.coursewright.bond.advice.KeepClear;
import org.coursewright.bond.advice.ProfileRequest;
import org.coursewright.measure.Length;

/**
 * What changes have to keep to, whatever the wall.
 *
 * @param step changes are whole multiples of it
 * @param budget most that all changes together may come to
 * @param keepClear stretches of walls where no opening may come
 * @param dimensions how many dimensions may change in the whole building
 */
record Terms(Length step, Length budget, List<KeepClear> keepClear, int dimensions) {

    /** Layings of walls for finding good values, all walls together. */
    private static final int TRIES_IN_ALL = 50;
    private static final int MOST_TRIES = 4;

    private static final Length UNLIMITED = Length.ofUnits(Long.MAX_VALUE);

    static Terms of(AdviceRequest request) {
        return new Terms(request.step(), request.budget().orElse(UNLIMITED), request.keepClear(),
                request.adjustables().size());
    }

    /** For looking at one dimension. */
    static Terms of(ProfileRequest request) {
        return new Terms(request.step(), UNLIMITED, request.keepClear(), 1);
    }

    /** @return what is left of these terms when walls have moved */
    Terms after(MovedWalls moved) {
        return new Terms(step, isLimited() ? budget.minus(moved.movement()) : budget, moved.keepClear(keepClear),
                dimensions);
    }

    /** @return whether all changes together may only come to so much */
    boolean isLimited() {
        return !budget.equals(UNLIMITED);
    }

    /**
     * How often a wall may be laid: its share, by the number of its dimensions.
     *
     * @param before dimensions of the walls before it
     * @param own dimensions of the wall
     */
    int tries(int before, int own) {
        int all = Math.max(1, dimensions);
        return Math.min(MOST_TRIES, TRIES_IN_ALL * (before + own) / all - TRIES_IN_ALL * before / all);
    }

    /** @return how that dimension of the wall may change */
    FaceChange change(WallFace wall, Adjustable adjustable) {
        return new FaceChange(wall, adjustable,
                keepClear.stream().filter(kept -> kept.wall().equals(wall.mark())).toList());
    }
}
