package org.coursewright.workbench.internal.outline;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.accessible.AccessibleName;
import org.coursewright.workbench.internal.navigator.ProjectTree;
import org.coursewright.workbench.internal.navigator.ProjectTreeLabels;
import org.coursewright.workbench.internal.project.ProjectActions;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.contentoutline.ContentOutlinePage;

/** The tree of one element and its parts; selects what is selected elsewhere, and the other way round. */
final class ElementOutline extends ContentOutlinePage implements OpenProjectsListener, ISelectionListener {

    private final EObject root;
    private final OpenProjects projects = PlatformUI.getWorkbench().getService(OpenProjects.class);
    private ProjectActions actions;

    ElementOutline(EObject root) {
        this.root = root;
    }

    @Override
    public void createControl(Composite parent) {
        super.createControl(parent);
        TreeViewer viewer = getTreeViewer();
        viewer.setContentProvider(new PartsOfElement());
        viewer.setLabelProvider(new DelegatingStyledCellLabelProvider(
                new ProjectTreeLabels(projects, JFaceResources.getResources())));
        AccessibleName.give(viewer.getControl(), OutlineText.accessibleName);
        viewer.setAutoExpandLevel(2);
        viewer.setInput(projects); // not the element itself: a tree takes its input for something above its elements
        actions = new ProjectActions(getSite().getActionBars(), getSite());
        projects.addListener(this);
        getSite().getPage().addPostSelectionListener(this);
    }

    @Override
    public void dispose() {
        getSite().getPage().removePostSelectionListener(this);
        projects.removeListener(this);
        actions.dispose();
        super.dispose();
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        if (change == Change.EDITED) {
            getTreeViewer().refresh();
        }
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (getControl().isFocusControl() || !(selection instanceof IStructuredSelection elements)) {
            return;
        }
        EObject element = Adapters.adapt(elements.getFirstElement(), EObject.class);
        if (element != null && EcoreUtil.isAncestor(root, element)) {
            getTreeViewer().setSelection(new StructuredSelection(element), true);
        }
    }

    /** As in the navigator, but one element is at the top. */
    private final class PartsOfElement extends ProjectTree {

        PartsOfElement() {
            super(projects);
        }

        @Override
        public Object[] getElements(Object input) {
            return new Object[]{root};
        }

        @Override
        public Object getParent(Object child) {
            return child == root ? null : super.getParent(child);
        }
    }
}
