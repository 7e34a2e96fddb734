package org.coursewright.bond.advice.internal;

import java.util.List;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.AdviceRequest;
import org.coursewright.bond.advice.KeepClear;
import org.coursewright.measure.Length;

/**
 * What changes have to keep to, whatever the wall.
 *
 * @param step changes are whole multiples of it
 * @param budget most that all changes together may come to
 * @param keepClear stretches of walls where no opening may come
 * @param tries values of one dimension for which its wall may be laid: the more dimensions, the fewer
 */
record Terms(Length step, Length budget, List<KeepClear> keepClear, int tries) {

    private static final int TRIES_IN_ALL = 120;
    private static final int MOST_TRIES = 2;

    private static final Length UNLIMITED = Length.ofUnits(Long.MAX_VALUE);

    static Terms of(AdviceRequest request) {
        int tries = Math.max(1, Math.min(MOST_TRIES, TRIES_IN_ALL / Math.max(1, request.adjustables().size())));
        return new Terms(request.step(), request.budget().orElse(UNLIMITED), request.keepClear(), tries);
    }

    /** @return whether there are so many dimensions that only one value of each may be tried */
    boolean isHurried() {
        return tries == 1;
    }

    /** @return how that dimension of the wall may change */
    FaceChange change(WallFace wall, Adjustable adjustable) {
        return new FaceChange(wall, adjustable,
                keepClear.stream().filter(kept -> kept.wall().equals(wall.mark())).toList());
    }
}
