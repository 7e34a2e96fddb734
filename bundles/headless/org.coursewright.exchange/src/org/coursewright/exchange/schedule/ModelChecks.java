package org.coursewright.exchange.schedule;

import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.remark.Remarks;
import org.coursewright.model.project.Project;

/**
 * Lets core have the last word on what was made: what rows and plan allow and core does not, such as a wall of more units
 * than it lays, or a lap that no unit can keep, is refused here and not later.
 */
final class ModelChecks {

    private final Place file;
    private final Remarks remarks;

    ModelChecks(Place file, Remarks remarks) {
        this.file = file;
        this.remarks = remarks;
    }

    /** Notes elements that contradict themselves or one another. */
    void noteInvalid(Project project) {
        for (Finding finding : BondTranslator.translate(project).findings()) {
            if (finding.severity() == Severity.INVALID) {
                remarks.error(file, "%s: %s".formatted(finding.element(), finding.message()));
            }
        }
    }
}
