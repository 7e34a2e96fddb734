package org.coursewright.layout.ui.face;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.coursewright.bond.CutReason;

/** Why pieces are cut, found out when somebody first asks: that takes about as long as laying the wall soon. */
public final class CutInquest {

    private final Supplier<List<CutReason>> inquiry;
    private Optional<List<CutReason>> found = Optional.empty();

    /** @param inquiry finds the reasons */
    public CutInquest(Supplier<List<CutReason>> inquiry) {
        this.inquiry = inquiry;
    }

    /** @return a reason for every run that has cuts */
    synchronized List<CutReason> reasons() {
        List<CutReason> reasons = found.orElseGet(inquiry);
        found = Optional.of(reasons);
        return reasons;
    }
}
