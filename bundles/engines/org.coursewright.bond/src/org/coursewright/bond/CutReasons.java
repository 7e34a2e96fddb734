package org.coursewright.bond;

import java.util.List;
import java.util.Objects;

import org.coursewright.bond.internal.reason.CutInquiry;

/**
 * Explains the cuts of a result. What a run needs by itself is recomputed for every run that has cuts, also as it would
 * be if walls took turns the other way; nothing is laid anew, so asking is cheap.
 */
public final class CutReasons {

    private final BondRequest request;
    private final BondResult result;

    /**
     * @param request what was asked, not null
     * @param result the answer to it, not null
     */
    public CutReasons(BondRequest request, BondResult result) {
        this.request = Objects.requireNonNull(request, "request");
        this.result = Objects.requireNonNull(result, "result");
    }

    /**
     * Explains the cuts of one wall.
     *
     * @param wall place of the wall in the request, from 0
     * @return a reason for every run that has cut pieces, from the bottom up, in a course from start to end
     */
    public List<CutReason> of(int wall) {
        WallLayout layout = result.walls().get(wall);
        return layout.cutPieces() == 0
                ? List.of()
                : new CutInquiry(request.walls().get(wall), layout, request.meetings(), result.throughOnOdd())
                        .reasons();
    }
}
