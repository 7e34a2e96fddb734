package org.coursewright.diagram.ui.editor;

import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.diagram.ui.history.SessionCommandStack;
import org.coursewright.diagram.ui.ink.Ink;
import org.coursewright.diagram.ui.part.DiagramRoot;
import org.coursewright.diagram.ui.part.ElementPart;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.model.project.Project;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.MouseWheelHandler;
import org.eclipse.gef.MouseWheelZoomHandler;
import org.eclipse.gef.ui.parts.GraphicalEditor;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;

/**
 * A graphical editor on one element of an open project. Its edits, history and unsaved state are the project's; it
 * closes with the project. Everything it shows is refreshed after each edit and each change of zoom.
 */
@SuppressWarnings("resource") // whoever opened the project closes its session
public abstract class DiagramEditor extends GraphicalEditor implements ProjectEditor {

    private ElementInput input;
    private SessionCommandStack history;
    private ShownProject shown;

    @Override
    public void init(IEditorSite site, IEditorInput opened) throws PartInitException {
        if (!(opened instanceof ElementInput element)) {
            throw new PartInitException(DiagramText.notAnElement);
        }
        input = element;
        history = new SessionCommandStack(element.session());
        DefaultEditDomain domain = new DefaultEditDomain(this);
        domain.setCommandStack(history);
        setEditDomain(domain);
        super.init(site, opened);
        shown = new ShownProject(this, element, this::projectEdited);
        setPartName(opened.getName());
    }

    @Override
    public final ShownProject shown() {
        return shown;
    }

    /** @return the session of the project */
    protected final ProjectSession session() {
        return input.session();
    }

    /** @return the project that is shown */
    protected final Project project() {
        return session().project();
    }

    /** @return the results that follow from the project */
    protected final DerivationGraph results() {
        return session().derived();
    }

    /** @return the element that the editor was opened on; it may have been deleted since */
    protected final EObject element() {
        return input.element();
    }

    /** @return whether the element is part of the project, which it is not while its removal is not undone */
    protected final boolean isElementThere() {
        return shown.holds(element());
    }

    /** Shows the whole diagram as large as possible. */
    protected abstract void fit();

    @Override
    protected void configureGraphicalViewer() {
        super.configureGraphicalViewer();
        DiagramRoot root = new DiagramRoot();
        getGraphicalViewer().setRootEditPart(root);
        getGraphicalViewer().setKeyHandler(new DiagramKeys(getGraphicalViewer(), this::fit));
        getGraphicalViewer().setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.MOD1),
                MouseWheelZoomHandler.SINGLETON);
        getGraphicalViewer().getControl().addListener(SWT.Paint, event -> followLook());
        root.getZoomManager().addZoomListener(zoom -> refreshParts());
    }

    /** @return what to draw with in the present theme */
    protected final Ink ink() {
        return Ink.of(getGraphicalViewer().getControl().getParent());
    }

    /** The window may turn light or dark at any time; what is shown then is drawn anew. */
    private void followLook() {
        Control control = getGraphicalViewer().getControl();
        if (!control.getBackground().equals(ink().paper())) {
            control.getDisplay().asyncExec(() -> {
                if (!control.isDisposed()) {
                    control.setBackground(ink().paper());
                    refreshParts();
                }
            });
        }
    }

    /** @return the scale that the diagram is shown in */
    protected final DiagramScale scale() {
        return DiagramScale.of(getGraphicalViewer());
    }

    /** Shows all parts as the project is now. */
    protected void refreshParts() {
        if (getGraphicalViewer().getContents() instanceof ElementPart<?> contents) {
            contents.refreshAll();
        }
    }

    private void projectEdited() {
        if (getGraphicalViewer() != null) {
            edited();
        }
    }

    /** Takes note that the project was edited or saved. */
    protected void edited() {
        setPartName(input.getName());
        firePropertyChange(PROP_DIRTY);
        if (isElementThere()) {
            refreshParts();
        }
    }

    /** Selects what has been selected in another part, if it is shown here. */
    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        super.selectionChanged(part, selection);
        if (part != this && selection instanceof IStructuredSelection structured && structured.size() == 1) {
            EObject chosen = Adapters.adapt(structured.getFirstElement(), EObject.class);
            if (getGraphicalViewer().getEditPartRegistry().get(chosen) instanceof ElementPart<?> there) {
                getGraphicalViewer().select(there);
                getGraphicalViewer().reveal(there);
            }
        }
    }

    @Override
    public void setFocus() {
        shown.activate();
        super.setFocus();
    }

    @Override
    public boolean isDirty() {
        return session().isDirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("saved as the project it belongs to");
    }

    @Override
    public void dispose() {
        if (shown != null) {
            shown.end();
        }
        super.dispose();
        if (history != null) {
            history.dispose();
        }
    }
}
