package org.coursewright.layout.ui.plan.part;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.core.validity.ElementNames;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;

/**
 * What is wrong or doubtful about elements of a plan. Notes are not shown there.
 *
 * @param findings about the project
 */
public record PlanTrouble(List<Finding> findings) {

    /** Nothing is known. */
    public static final PlanTrouble NONE = new PlanTrouble(List.of());

    private static final Pattern SEVERAL = Pattern.compile("walls? (.+)", Pattern.CASE_INSENSITIVE);

    public PlanTrouble {
        findings = findings.stream().filter(finding -> finding.severity() != Severity.NOTE).toList();
    }

    /**
     * @param wall of the project
     * @return the findings about it, the gravest first
     */
    public List<Finding> of(Wall wall) {
        return findings.stream().filter(finding -> isAbout(finding.element(), wall)).toList();
    }

    /**
     * @param opening of a wall
     * @return the findings about it, the gravest first
     */
    public List<Finding> of(Opening opening) {
        return opening.eContainer() instanceof Wall wall
                ? findings.stream().filter(finding -> isAbout(finding.element(), ElementNames.of(opening, wall)))
                        .toList()
                : List.of();
    }

    /**
     * @param found some findings
     * @return the gravest severity among them
     */
    public static Optional<Severity> gravest(List<Finding> found) {
        return found.stream().map(Finding::severity).min(Comparator.naturalOrder());
    }

    private static boolean isAbout(String element, String name) {
        return element.equalsIgnoreCase(name) || element.toLowerCase(Locale.ROOT).startsWith(
                name.toLowerCase(Locale.ROOT) + ",");
    }

    /** Findings name one wall, a course of it, or several walls: "wall W3, course 2", "walls W3 and W4". */
    private static boolean isAbout(String element, Wall wall) {
        var several = SEVERAL.matcher(element);
        return isAbout(element, ElementNames.of(wall)) || several.matches() && wall.getMark() != null
                && List.of(several.group(1).split(" and |, ")).contains(wall.getMark());
    }
}
