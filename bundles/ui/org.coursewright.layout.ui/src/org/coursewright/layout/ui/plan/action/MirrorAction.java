package org.coursewright.layout.ui.plan.action;

import org.coursewright.layout.ui.plan.change.WallCopies;
import org.coursewright.model.edit.command.MirrorWallsCommand;
import org.eclipse.ui.IWorkbenchPart;

/** Turns the selected walls over where they are. */
public final class MirrorAction extends PlanAction {

    /** Under which the action is registered that exchanges left and right. */
    public static final String SIDEWAYS = "org.coursewright.layout.ui.plan.mirrorSideways";

    /** Under which the action is registered that exchanges top and bottom. */
    public static final String UP_DOWN = "org.coursewright.layout.ui.plan.mirrorUpDown";

    private final boolean sideways;

    /**
     * @param editor of the plan
     * @param selected what is selected
     * @param sideways whether left and right are exchanged, else top and bottom
     */
    public MirrorAction(IWorkbenchPart editor, PlanSelection selected, boolean sideways) {
        super(editor, selected, sideways ? SIDEWAYS : UP_DOWN,
                sideways ? ActionText.mirrorSideways : ActionText.mirrorUpDown);
        this.sideways = sideways;
    }

    @Override
    protected boolean calculateEnabled() {
        return !selected().walls().isEmpty();
    }

    @Override
    public void run() {
        WallCopies walls = new WallCopies(selected().walls());
        selected().execute(new MirrorWallsCommand(walls.mirrored(sideways), walls.walls().size()));
    }
}
