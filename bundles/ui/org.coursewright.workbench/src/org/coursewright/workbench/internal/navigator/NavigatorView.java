package org.coursewright.workbench.internal.navigator;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.internal.project.ProjectActions;
import org.coursewright.workbench.internal.project.ProjectSaveables;
import org.coursewright.workbench.notice.Notices;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.ISaveablePart;
import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.Saveable;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.IShowInTarget;
import org.eclipse.ui.part.ShowInContext;
import org.eclipse.ui.part.ViewPart;

/** Shows every open project as a tree of its elements, and answers for what is not saved in them. */
public final class NavigatorView extends ViewPart
        implements
            ISaveablePart,
            ISaveablesSource,
            IShowInTarget,
            OpenProjectsListener {

    private OpenProjects projects;
    private ProjectSaveables saveables;
    private ProjectActions actions;
    private Composite stack;
    private EmptyHint hint;
    private ProjectTreePanel panel;

    @Override
    public void createPartControl(Composite parent) {
        projects = getSite().getService(OpenProjects.class);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        GridDataFactory.fillDefaults().grab(true, false)
                .applyTo(new NoticeBoard(parent, getSite().getService(Notices.class)));
        stack = new Composite(parent, SWT.NONE);
        stack.setLayout(new StackLayout());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(stack);
        hint = new EmptyHint(stack, this::openProject);
        panel = new ProjectTreePanel(stack, projects,
                getViewSite().getActionBars().getStatusLineManager()::setErrorMessage);
        panel.connect(getViewSite());
        saveables = new ProjectSaveables(this, getSite());
        actions = new ProjectActions(getViewSite());
        projects.addListener(this);
        showTreeOrHint();
    }

    @Override
    public void dispose() {
        projects.removeListener(this);
        saveables.dispose();
        actions.dispose();
        super.dispose();
    }

    @Override
    public void setFocus() {
        top().setFocus();
    }

    private void openProject() {
        try {
            getSite().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_PROJECT, null);
        } catch (CommandException e) {
            throw new IllegalStateException(e);
        }
    }

    private void showTreeOrHint() {
        ((StackLayout) stack.getLayout()).topControl = top();
        stack.layout();
    }

    private Control top() {
        return projects.sessions().isEmpty() ? hint : panel;
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        showTreeOrHint();
        panel.refresh();
        if (change == Change.OPENED) {
            panel.show(session);
        }
        firePropertyChange(PROP_DIRTY);
    }

    @Override
    public boolean show(ShowInContext context) {
        return context.getSelection() instanceof StructuredSelection elements && panel.reveal(elements);
    }

    @Override
    public Saveable[] getSaveables() {
        return saveables.all();
    }

    @Override
    public Saveable[] getActiveSaveables() {
        return saveables.active();
    }

    @Override
    public boolean isDirty() {
        return saveables.isDirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("saved one project at a time");
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("a project is saved where it is");
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public boolean isSaveOnCloseNeeded() {
        return isDirty();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter == ProjectSaveables.class ? adapter.cast(saveables) : super.getAdapter(adapter);
    }
}
