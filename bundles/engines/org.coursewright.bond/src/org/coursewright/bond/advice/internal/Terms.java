package org.coursewright.bond.advice.internal;

import java.util.List;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.AdviceRequest;
import org.coursewright.bond.advice.KeepClear;
import org.coursewright.measure.Length;

/** What changes have to keep to, whatever the wall. */
record Terms(Length step, Length budget, List<KeepClear> keepClear) {

    private static final Length UNLIMITED = Length.ofUnits(Long.MAX_VALUE);

    static Terms of(AdviceRequest request) {
        return new Terms(request.step(), request.budget().orElse(UNLIMITED), request.keepClear());
    }

    /** @return how that dimension of the wall may change */
    FaceChange change(WallFace wall, Adjustable adjustable) {
        return new FaceChange(wall, adjustable,
                keepClear.stream().filter(kept -> kept.wall().equals(wall.mark())).toList());
    }
}
