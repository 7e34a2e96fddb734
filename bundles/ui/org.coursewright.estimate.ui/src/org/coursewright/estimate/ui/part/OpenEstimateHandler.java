package org.coursewright.estimate.ui.part;

import java.util.Optional;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.diagram.ui.editor.ElementInput;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens a part of the active project's estimate. */
public final class OpenEstimateHandler extends AbstractHandler {

    private static final String PART = "org.coursewright.estimate.ui.open.part";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        return open(event, EstimatePart.of(event.getParameter(PART)));
    }

    /**
     * Opens a part of the active project's estimate in the window that a command was given in.
     *
     * @param event the command
     * @param part wanted
     * @return nothing, as results of commands are
     * @throws ExecutionException if it cannot be opened
     */
    public static Object open(ExecutionEvent event, EstimatePart part) throws ExecutionException {
        IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
        Optional<ElementInput> project = PlatformUI.getWorkbench().getService(OpenProjects.class).active().map(
                OpenEstimateHandler::input);
        if (project.isPresent()) {
            open(page, project.get(), part);
        }
        return null;
    }

    @Override
    public void setEnabled(Object evaluationContext) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(OpenProjects.class).active().isPresent());
    }

    /** All parts are opened on the project itself, which is always there: an estimate may be added later. */
    static ElementInput input(ProjectSession session) {
        return new ElementInput(session, session.project());
    }

    static EstimateEditor open(IWorkbenchPage page, ElementInput project, EstimatePart part)
            throws ExecutionException {
        try {
            return (EstimateEditor) page.openEditor(project, part.editor(), true, IWorkbenchPage.MATCH_INPUT
                    | IWorkbenchPage.MATCH_ID);
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
    }
}
