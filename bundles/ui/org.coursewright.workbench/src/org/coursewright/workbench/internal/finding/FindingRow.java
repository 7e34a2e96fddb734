package org.coursewright.workbench.internal.finding;

import org.coursewright.core.finding.Finding;
import org.coursewright.model.project.Project;
import org.eclipse.core.runtime.IAdaptable;

/**
 * One finding as it is listed; adapts to the element that it is about.
 *
 * @param project in which it was found
 * @param finding what was found
 */
record FindingRow(Project project, Finding finding) implements IAdaptable {

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return finding.element().in(project).filter(adapter::isInstance).map(adapter::cast)
                .orElse(null);
    }
}
