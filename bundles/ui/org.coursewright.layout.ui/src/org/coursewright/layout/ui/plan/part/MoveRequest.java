package org.coursewright.layout.ui.plan.part;

import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.requests.ChangeBoundsRequest;

/** Asks for elements of a plan to be moved. */
public final class MoveRequest extends ChangeBoundsRequest {

    private boolean fine;

    /** A request to move by the module. */
    public MoveRequest() {
        super(RequestConstants.REQ_MOVE);
    }

    /** @return whether fine steps hold instead of the module */
    public boolean isFine() {
        return fine;
    }

    /** @param wanted whether fine steps hold instead of the module */
    public void setFine(boolean wanted) {
        fine = wanted;
    }
}
