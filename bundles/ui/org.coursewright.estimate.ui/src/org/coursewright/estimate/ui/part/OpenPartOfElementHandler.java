package org.coursewright.estimate.ui.part;

import java.util.Optional;

import org.coursewright.diagram.ui.editor.ElementInput;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the part of the estimate that the selected element belongs to, and shows the element there. */
public final class OpenPartOfElementHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        EObject element = Adapters.adapt(HandlerUtil.getCurrentStructuredSelection(event).getFirstElement(),
                EObject.class);
        Optional<ElementInput> project = Optional.ofNullable(element).flatMap(window.getService(
                OpenProjects.class)::sessionOf).map(OpenEstimateHandler::input);
        if (project.isPresent()) {
            OpenEstimateHandler.open(window.getActivePage(), project.get(), part(element)).reveal(element);
        }
        return null;
    }

    private static EstimatePart part(EObject element) {
        if (element instanceof MixDesign) {
            return EstimatePart.MIXES;
        }
        return element instanceof Scenario ? EstimatePart.SCENARIOS : EstimatePart.PRICE;
    }
}
