package org.coursewright.layout.ui.plan.editor;

import java.util.Optional;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.diagram.ui.editor.ElementInput;
import org.coursewright.model.building.Storey;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the plan of the selected storey, or of the selected building. */
public final class OpenPlanHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        EObject chosen = Adapters.adapt(HandlerUtil.getCurrentStructuredSelection(event).getFirstElement(),
                EObject.class);
        if (chosen != null) {
            var input = window.getService(OpenProjects.class).sessionOf(chosen).flatMap(OpenPlanHandler::input);
            if (input.isPresent()) {
                open(window, input.get(), chosen);
            }
        }
        return null;
    }

    private static Optional<ElementInput> input(ProjectSession session) {
        return Optional.ofNullable(session.project().getBuilding())
                .map(building -> new ElementInput(session, building));
    }

    private static void open(IWorkbenchWindow window, ElementInput input, EObject chosen) throws ExecutionException {
        try {
            var editor = (PlanEditor) window.getActivePage().openEditor(input, PlanEditor.ID);
            if (chosen instanceof Storey storey) {
                editor.show(storey);
            }
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
    }
}
