package org.coursewright.layout.ui.plan.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.EObject;

/**
 * What is wrong or doubtful about elements of a plan.
 *
 * @param byElement the findings about each element, the gravest first
 */
public record PlanTrouble(Map<EObject, List<Finding>> byElement) {

    /** Nothing is known. */
    public static final PlanTrouble NONE = new PlanTrouble(Map.of());

    /**
     * @param findings about a project
     * @param project the project
     * @return those that somebody should look at, by their elements; notes are left out
     */
    public static PlanTrouble of(List<Finding> findings, Project project) {
        Map<EObject, List<Finding>> found = new HashMap<>();
        findings.stream().filter(finding -> finding.severity() != Severity.NOTE)
                .forEach(finding -> finding.element().in(project)
                        .ifPresent(element -> found.computeIfAbsent(element, each -> new ArrayList<>()).add(finding)));
        return new PlanTrouble(found);
    }

    /**
     * @param element of the project
     * @return the findings about it, the gravest first
     */
    public List<Finding> of(EObject element) {
        return byElement.getOrDefault(element, List.of());
    }

    /**
     * @param found some findings
     * @return the gravest severity among them
     */
    public static Optional<Severity> gravest(List<Finding> found) {
        return found.stream().map(Finding::severity).min(Comparator.naturalOrder());
    }
}
