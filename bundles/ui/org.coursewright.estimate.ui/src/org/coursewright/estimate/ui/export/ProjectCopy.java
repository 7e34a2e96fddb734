package org.coursewright.estimate.ui.export;

import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.derive.Derived;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A project as it was when somebody asked for a report, to be read while the project is edited on.
 *
 * @param project that nobody else has
 */
record ProjectCopy(Project project) {

    /** To be called in the user interface thread. */
    static ProjectCopy of(Project edited) {
        return new ProjectCopy(EcoreUtil.copy(edited));
    }

    /** Works a result out; in any one thread. */
    <T> T result(Derived<T> wanted, Progress progress) {
        DerivationGraph graph = new DerivationGraph(project);
        try {
            return graph.get(wanted, progress);
        } finally {
            graph.close();
        }
    }
}
