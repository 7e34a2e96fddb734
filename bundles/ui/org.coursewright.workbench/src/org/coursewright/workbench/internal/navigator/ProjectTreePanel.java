package org.coursewright.workbench.internal.navigator;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.jface.viewers.TreeViewerEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.actions.BaseSelectionListenerAction;

/** The tree itself, whose marks can be edited in place. */
final class ProjectTreePanel extends Composite {

    /** Storeys and their walls are seen at first; what else a project has, only by its name. */
    private static final int FIRST_LEVELS = 2;

    private final OpenProjects projects;
    private final TreeViewer viewer;

    ProjectTreePanel(Composite parent, OpenProjects projects, Consumer<String> refused) {
        super(parent, SWT.NONE);
        this.projects = projects;
        viewer = new TreeViewer(this, SWT.MULTI | SWT.H_SCROLL | SWT.V_SCROLL);
        viewer.setUseHashlookup(true);
        AccessibleName.give(viewer.getTree(), NavigatorText.accessibleName);
        viewer.setContentProvider(new ProjectTree(projects));
        TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.NONE);
        column.setLabelProvider(new SignedLabels(new ProjectTreeLabels(projects, JFaceResources.getResources())));
        column.setEditingSupport(new MarkEditing(viewer, projects, refused));
        TreeViewerEditor.create(viewer, new OnlyWhenAsked(viewer), ColumnViewerEditor.DEFAULT);
        TreeColumnLayout layout = new TreeColumnLayout();
        layout.setColumnData(column.getColumn(), new ColumnWeightData(1));
        setLayout(layout);
        viewer.setInput(projects);
    }

    /** Marks are edited by the rename action; a click selects, and a double-click opens. */
    private static final class OnlyWhenAsked extends ColumnViewerEditorActivationStrategy {

        OnlyWhenAsked(TreeViewer viewer) {
            super(viewer);
        }

        @Override
        protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
            return event.eventType == ColumnViewerEditorActivationEvent.PROGRAMMATIC;
        }
    }

    /** Offers selection, menu and editing actions through the site of the view that the panel is in. */
    void connect(IViewSite site) {
        site.setSelectionProvider(viewer);
        MenuManager menu = new MenuManager();
        for (BaseSelectionListenerAction action : List.of(new RenameAction(viewer), new DeleteAction(projects))) {
            viewer.addSelectionChangedListener(action);
            site.getActionBars().setGlobalActionHandler(action.getId(), action);
            menu.add(action);
        }
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        viewer.getControl().setMenu(menu.createContextMenu(viewer.getControl()));
        site.registerContextMenu(menu, viewer);
        viewer.addOpenListener(new ElementOpening(viewer, site));
    }

    void show(ProjectSession session) {
        viewer.expandToLevel(session.project(), 1);
        Optional.ofNullable(session.project().getBuilding())
                .ifPresent(building -> viewer.expandToLevel(building, FIRST_LEVELS));
        viewer.setSelection(new StructuredSelection(session.project()), true);
    }

    void refresh() {
        viewer.refresh();
    }

    /** @return whether any of the elements is in the tree */
    boolean reveal(IStructuredSelection elements) {
        viewer.setSelection(elements, true);
        return !viewer.getStructuredSelection().isEmpty();
    }

    @Override
    public boolean setFocus() {
        return viewer.getControl().setFocus();
    }
}
