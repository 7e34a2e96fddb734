package org.coursewright.workbench.internal.finding;

import java.util.List;

import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.finding.FindingMarkers;
import org.coursewright.workbench.internal.project.ProjectActions;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.part.IShowInTarget;
import org.eclipse.ui.part.ShowInContext;
import org.eclipse.ui.part.ViewPart;

/** Lists what is wrong or doubtful in the open projects; selecting a finding leads to its element. */
public final class FindingsView extends ViewPart {

    private static final int MARGIN = 12;

    private OpenProjects projects;
    private ProjectActions actions;
    private FindingMarkers markers;
    private final Runnable refresh = this::show;
    private Composite stack;
    private Composite hintPanel;
    private Label hintText;
    private FindingsTable table;

    @Override
    public void createPartControl(Composite parent) {
        projects = getSite().getService(OpenProjects.class);
        actions = new ProjectActions(getViewSite());
        stack = new Composite(parent, SWT.NONE);
        stack.setLayout(new StackLayout());
        createHint();
        markers = getSite().getService(FindingMarkers.class);
        table = new FindingsTable(stack, markers);
        table.viewer().addPostSelectionChangedListener(event -> reveal(event.getStructuredSelection()));
        getSite().setSelectionProvider(table.viewer());
        markers.addListener(refresh);
        show();
    }

    private void createHint() {
        hintPanel = new Composite(stack, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN).applyTo(hintPanel);
        hintText = new Label(hintPanel, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(hintText);
    }

    @Override
    public void dispose() {
        markers.removeListener(refresh);
        actions.dispose();
        super.dispose();
    }

    @Override
    public void setFocus() {
        ((StackLayout) stack.getLayout()).topControl.setFocus();
    }

    private void show() {
        List<IMarker> rows = markers.all();
        table.show(rows);
        hintText.setText(hint());
        ((StackLayout) stack.getLayout()).topControl = rows.isEmpty() ? hintPanel : table;
        stack.layout();
        hintText.requestLayout();
        setContentDescription(rows.isEmpty() ? "" : NLS.bind(heading(), counts(rows)));
    }

    private String heading() {
        return markers.areCurrent() ? FindingsText.current : FindingsText.checkingAgain;
    }

    private String hint() {
        if (projects.sessions().isEmpty()) {
            return FindingsText.noProject;
        }
        return markers.areCurrent() ? FindingsText.nothingFound : FindingsText.checking;
    }

    private static String counts(List<IMarker> rows) {
        long warnings = count(rows, IMarker.SEVERITY_WARNING);
        long notes = count(rows, IMarker.SEVERITY_INFO);
        return NLS.bind(FindingsText.counts, new Object[]{rows.size() - warnings - notes, warnings, notes});
    }

    private static long count(List<IMarker> rows, int severity) {
        return rows.stream().filter(row -> row.getAttribute(IMarker.SEVERITY, -1) == severity).count();
    }

    private void reveal(IStructuredSelection selection) {
        EObject element = Adapters.adapt(selection.getFirstElement(), EObject.class);
        IViewPart navigator = getSite().getPage().findView(WorkbenchIds.NAVIGATOR);
        if (element != null && navigator instanceof IShowInTarget target) {
            target.show(new ShowInContext(null, new StructuredSelection(element)));
        }
    }
}
