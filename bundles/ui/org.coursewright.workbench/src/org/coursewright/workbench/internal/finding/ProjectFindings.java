package org.coursewright.workbench.internal.finding;

import java.util.List;
import java.util.concurrent.Executor;
import java.util.stream.Stream;

import org.coursewright.core.check.CheckReport;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.derive.DerivationGraph.Listening;
import org.coursewright.core.derive.NodeState;
import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.project.Project;
import org.eclipse.osgi.util.NLS;

/** The findings of one project, computed in the background after each edit. */
final class ProjectFindings {

    private static final String NOT_CHECKED = "project.not-checked";

    private final Project project;
    private final DerivationGraph results;
    private final Listening listening;
    private List<FindingRow> rows = List.of();
    private boolean closed;

    /**
     * @param session of the project
     * @param display runs what is told in the user interface thread
     * @param changed run there each time the findings have been computed
     */
    ProjectFindings(ProjectSession session, Executor display, Runnable changed) {
        project = session.project();
        results = session.derived();
        listening = results.listen(ProjectResults.CHECK, display, state -> {
            if (!closed) {
                rows = findings(state).map(finding -> new FindingRow(project, finding)).toList();
                changed.run();
            }
        });
    }

    List<FindingRow> rows() {
        return rows;
    }

    /** Whether the findings are those of the project as it is now. */
    boolean areCurrent() {
        return !(results.state(ProjectResults.CHECK) instanceof NodeState.Stale);
    }

    /** Ends the listening; what is already on its way is ignored. */
    void dispose() {
        closed = true;
        listening.end();
    }

    private Stream<Finding> findings(NodeState<CheckReport> state) {
        if (state instanceof NodeState.Failed<CheckReport> failed) {
            String message = NLS.bind(FindingsText.notChecked, failed.reason());
            return Stream.of(new Finding(Severity.ERROR, NOT_CHECKED,
                    ElementReference.of(project, FindingsText.project), message));
        }
        return state.value().stream().flatMap(report -> report.findings().stream());
    }
}
