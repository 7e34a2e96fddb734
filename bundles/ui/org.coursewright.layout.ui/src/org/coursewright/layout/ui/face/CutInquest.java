package org.coursewright.layout.ui.face;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.CutReason;
import org.coursewright.core.bond.LayoutOutcome;

/**
 * Why pieces of a wall are cut, found out when somebody first asks: that takes about as long as a first answer. Inquests on the
 * same layout are equal, whether somebody has asked or not.
 */
public final class CutInquest {

    /** Of a wall whose cuts nobody asks about. */
    public static final CutInquest NONE = new CutInquest(Optional.empty(), 0);

    private final Optional<LayoutOutcome> outcome;
    private final int wall;
    private Optional<List<CutReason>> found = Optional.empty();

    private CutInquest(Optional<LayoutOutcome> outcome, int wall) {
        this.outcome = outcome;
        this.wall = wall;
    }

    static CutInquest on(LayoutOutcome outcome, int wall) {
        return new CutInquest(Optional.of(outcome), wall);
    }

    /** @return a reason for every run that has cuts */
    synchronized List<CutReason> reasons() {
        List<CutReason> reasons = found.or(() -> outcome.map(each -> each.cutReasons(wall))).orElse(List.of());
        found = Optional.of(reasons);
        return reasons;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CutInquest that && wall == that.wall && outcome.equals(that.outcome);
    }

    @Override
    public int hashCode() {
        return outcome.hashCode() + wall;
    }
}
