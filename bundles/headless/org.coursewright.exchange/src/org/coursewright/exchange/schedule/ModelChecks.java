package org.coursewright.exchange.schedule;

import java.util.Map;
import java.util.Optional;

import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.remark.Remarks;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.EObject;

/**
 * Lets core say what rows that are each in order cannot be together, such as openings that overlap, walls that cross, or
 * a lap that no unit can keep, and tells it at the row that the element comes from.
 */
final class ModelChecks {

    /** The cell to look at first, where a finding is about one more than about the others of its row. */
    private static final Map<String, String> COLUMNS = Map.of("opening.overlap", "offset", "opening.beyond-wall",
            "offset", "opening.beyond-top", "height");

    private final Map<EObject, Place> rows;
    private final Place file;
    private final Remarks remarks;

    /**
     * @param rows where elements come from
     * @param file where all others do
     * @param remarks hears what is wrong
     */
    ModelChecks(Map<EObject, Place> rows, Place file, Remarks remarks) {
        this.rows = Map.copyOf(rows);
        this.file = file;
        this.remarks = remarks;
    }

    /** Notes elements that contradict themselves or one another. */
    void noteInvalid(Project project) {
        BondTranslator.translate(project).findings().stream()
                .filter(finding -> finding.severity() == Severity.INVALID)
                .forEach(finding -> remarks.error(placeOf(finding, project),
                        "%s: %s".formatted(finding.element().name(), finding.message())));
    }

    private Place placeOf(Finding finding, Project project) {
        Place place = finding.element().in(project).map(rows::get).orElse(file);
        return Optional.ofNullable(COLUMNS.get(finding.code())).map(place::inColumn).orElse(place);
    }
}
