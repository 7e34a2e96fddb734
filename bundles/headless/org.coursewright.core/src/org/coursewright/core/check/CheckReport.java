package org.coursewright.core.check;

import java.util.List;

import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Findings;

/**
 * What was found in a project.
 *
 * @param findings the gravest first; empty if all is well
 */
public record CheckReport(List<Finding> findings) {

    public CheckReport {
        findings = List.copyOf(findings);
    }

    /** @return this report and another's findings, the gravest first */
    CheckReport and(List<Finding> others) {
        Findings all = new Findings();
        all.addAll(findings);
        all.addAll(others);
        return new CheckReport(all.gravestFirst());
    }
}
