package org.coursewright.layout.ui.plan.editor;

import java.util.List;

import org.coursewright.layout.ui.plan.action.PlanSelection;
import org.coursewright.layout.ui.plan.part.StoreyPart;
import org.eclipse.gef.EditDomain;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.TraverseEvent;
import org.eclipse.swt.events.TraverseListener;

/**
 * Tab goes from element to element of a plan, and beyond the last one out of it. The toolkit asks here before it would take
 * the keys from the plan; as a key of the plan Tab would never arrive.
 */
final class PlanWalk implements TraverseListener {

    private final PlanSelection selected;

    PlanWalk(PlanSelection selected) {
        this.selected = selected;
    }

    @Override
    public void keyTraversed(TraverseEvent event) {
        boolean tab = event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
        if (tab && (event.stateMask & SWT.CTRL) == 0 && isSelecting()) {
            event.doit = !walked(event.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : -1);
        }
    }

    private boolean isSelecting() {
        EditDomain domain = selected.viewer().getEditDomain();
        return domain.getActiveTool() == domain.getDefaultTool();
    }

    /** Selects the next element, or none beyond the last one. */
    private boolean walked(int by) {
        List<EditPart> parts = selected.storey().map(StoreyPart::childParts).orElse(List.of());
        int to = next(parts, by);
        EditPartViewer viewer = selected.viewer();
        if (to < 0 || to >= parts.size()) {
            viewer.deselectAll();
            return false;
        }
        viewer.select(parts.get(to));
        viewer.reveal(parts.get(to));
        return true;
    }

    private int next(List<EditPart> parts, int by) {
        if (selected.viewer().getSelectedEditParts().isEmpty()) {
            return by > 0 ? 0 : parts.size() - 1;
        }
        return parts.indexOf(selected.viewer().getFocusEditPart()) + by;
    }
}
