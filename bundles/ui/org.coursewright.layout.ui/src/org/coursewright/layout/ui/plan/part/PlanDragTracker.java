package org.coursewright.layout.ui.plan.part;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.tools.DragEditPartsTracker;

/** Drags what is selected; with Shift in fine steps. */
final class PlanDragTracker extends DragEditPartsTracker {

    PlanDragTracker(EditPart source) {
        super(source);
    }

    @Override
    protected Request createTargetRequest() {
        return new MoveRequest();
    }

    @Override
    protected void updateTargetRequest() {
        super.updateTargetRequest();
        ((MoveRequest) getTargetRequest()).setFine(getCurrentInput().isShiftKeyDown());
    }

    /** Copies are made by their own action, so Ctrl adds to the selection and nothing else. */
    @Override
    protected void setCloneActive(boolean active) {
        super.setCloneActive(false);
    }
}
