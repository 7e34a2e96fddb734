package org.coursewright.core.check;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Findings;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Marked;
import org.coursewright.model.project.Project;

/** Checks that the project has walls and that openings, storeys and unit types have marks of their own. */
final class MarkCheck {

    private final Project project;
    private final Findings findings = new Findings();

    MarkCheck(Project project) {
        this.project = project;
    }

    List<Finding> findings() {
        List<Storey> storeys = Optional.ofNullable(project.getBuilding())
                .map(building -> List.copyOf(building.getStoreys()))
                .orElse(List.of());
        List<Wall> walls = storeys.stream().flatMap(storey -> storey.getWalls().stream()).toList();
        if (walls.isEmpty()) {
            findings.warning("project.no-walls", ElementReference.of(project, "project"),
                    "It has no walls yet. Add walls or make it from schedules.");
        }
        checkUnique("storey", storeys);
        checkUnique("opening", walls.stream().flatMap(wall -> wall.getOpenings().stream()).toList());
        Optional.ofNullable(project.getCatalogue()).ifPresent(catalogue -> {
            checkUnique("unit type", catalogue.getUnitTypes());
            checkUnique("lintel type", catalogue.getLintelTypes());
        });
        return findings.gravestFirst();
    }

    private void checkUnique(String kind, List<? extends Marked> elements) {
        Map<String, Integer> counts = new HashMap<>();
        for (Marked element : elements) {
            if (element.getMark() != null && !element.getMark().isBlank()
                    && counts.merge(element.getMark().strip().toLowerCase(Locale.ROOT), 1, Integer::sum) == 2) {
                findings.invalid(kind.replace(' ', '-') + ".duplicate-mark",
                        ElementReference.of(element, kind + " " + element.getMark()),
                        "Another %s has the same mark. Give every %s a mark of its own.".formatted(kind, kind));
            }
        }
    }
}
