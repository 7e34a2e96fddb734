package org.coursewright.layout.ui.plan.action;

import java.util.List;

import org.coursewright.layout.ui.plan.change.WallCopies;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.AddWallsCommand;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.IWorkbenchPart;

/** Copies the selected walls with their openings, and selects the copies. */
public final class CopyAction extends PlanAction {

    /** Under which the action is registered. */
    public static final String ID = "org.coursewright.layout.ui.plan.copy";

    /**
     * @param editor of the plan
     * @param selected what is selected
     */
    public CopyAction(IWorkbenchPart editor, PlanSelection selected) {
        super(editor, selected, ID, ActionText.copy);
    }

    @Override
    protected boolean calculateEnabled() {
        return !selected().walls().isEmpty();
    }

    @Override
    public void run() {
        List<Wall> copies = new WallCopies(selected().walls()).copies(selected().state().project());
        selected().execute(new AddWallsCommand(selected().storey().orElseThrow().element(), copies));
        EditPartViewer viewer = selected().viewer();
        viewer.setSelection(new StructuredSelection(
                copies.stream().map(viewer.getEditPartRegistry()::get).filter(part -> part != null).toList()));
    }
}
