package org.coursewright.core.cost;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.coursewright.core.derive.ModelRead;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.takeoff.ProjectBrief;
import org.coursewright.model.project.Project;

/**
 * What is wrong with mixes, work and rates of a project, whether or not anything is priced.
 *
 * @param findings the gravest first
 */
public record EstimateFindings(List<Finding> findings) {

    /** For a {@link org.coursewright.core.derive.DerivationGraph}. */
    public static final ModelRead<EstimateFindings> READ = new ModelRead<>("estimate", EstimateFindings.class,
            EstimateFindings::of);

    public EstimateFindings {
        findings = List.copyOf(findings);
    }

    private static EstimateFindings of(Project project) {
        Set<Finding> all = new LinkedHashSet<>(ProjectBrief.of(project).findings());
        all.addAll(CostReader.read(project).findings());
        return new EstimateFindings(List.copyOf(all));
    }
}
