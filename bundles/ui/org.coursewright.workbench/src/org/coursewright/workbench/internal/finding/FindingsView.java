package org.coursewright.workbench.internal.finding;

import java.util.List;

import org.coursewright.core.finding.Severity;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.internal.project.ProjectActions;
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
    private FindingsOfProjects findings;
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
        table = new FindingsTable(stack);
        table.viewer().addPostSelectionChangedListener(event -> reveal(event.getStructuredSelection()));
        getSite().setSelectionProvider(table.viewer());
        findings = new FindingsOfProjects(projects, parent.getDisplay()::asyncExec, this::show);
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
        findings.dispose();
        actions.dispose();
        super.dispose();
    }

    @Override
    public void setFocus() {
        ((StackLayout) stack.getLayout()).topControl.setFocus();
    }

    private void show() {
        List<FindingRow> rows = findings.rows();
        table.show(rows);
        hintText.setText(hint());
        ((StackLayout) stack.getLayout()).topControl = rows.isEmpty() ? hintPanel : table;
        stack.layout(true, true);
        setContentDescription(rows.isEmpty() ? "" : NLS.bind(heading(), counts(rows)));
    }

    private String heading() {
        return findings.areCurrent() ? FindingsText.current : FindingsText.checkingAgain;
    }

    private String hint() {
        if (projects.sessions().isEmpty()) {
            return FindingsText.noProject;
        }
        return findings.areCurrent() ? FindingsText.nothingFound : FindingsText.checking;
    }

    private static String counts(List<FindingRow> rows) {
        long warnings = count(rows, Severity.WARNING);
        long notes = count(rows, Severity.NOTE);
        return NLS.bind(FindingsText.counts, new Object[]{rows.size() - warnings - notes, warnings, notes});
    }

    private static long count(List<FindingRow> rows, Severity severity) {
        return rows.stream().filter(row -> row.finding().severity() == severity).count();
    }

    private void reveal(IStructuredSelection selection) {
        EObject element = Adapters.adapt(selection.getFirstElement(), EObject.class);
        IViewPart navigator = getSite().getPage().findView(WorkbenchIds.NAVIGATOR);
        if (element != null && navigator instanceof IShowInTarget target) {
            target.show(new ShowInContext(null, new StructuredSelection(element)));
        }
    }
}
