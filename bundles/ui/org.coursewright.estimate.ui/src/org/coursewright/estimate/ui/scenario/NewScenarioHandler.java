package org.coursewright.estimate.ui.scenario;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.estimate.ui.part.EstimatePart;
import org.coursewright.estimate.ui.part.OpenEstimateHandler;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Asks what is to be different in a new scenario, adds it to the active project, and shows it beside the others. */
public final class NewScenarioHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        boolean added = PlatformUI.getWorkbench().getService(OpenProjects.class).active()
                .filter(session -> add(shell, session)).isPresent();
        return added ? OpenEstimateHandler.open(event, EstimatePart.SCENARIOS) : null;
    }

    private static boolean add(Shell shell, ProjectSession session) {
        NewScenarioDialog dialog = new NewScenarioDialog(shell, session.project());
        boolean wanted = dialog.open() == Window.OK;
        if (wanted) {
            session.execute(dialog.command());
        }
        return wanted;
    }

    @Override
    public void setEnabled(Object evaluationContext) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(OpenProjects.class).active().isPresent());
    }
}
