package org.coursewright.model.edit.command;

import org.coursewright.model.estimate.Estimate;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.project.Project;

/** The estimate of a project, which begins with the first decision about it. */
final class EstimateOf {

    private EstimateOf() {
    }

    static Estimate project(Project project) {
        if (project.getEstimate() == null) {
            project.setEstimate(EstimateFactory.eINSTANCE.createEstimate());
        }
        return project.getEstimate();
    }
}
