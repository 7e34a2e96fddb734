package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.estimate.SpecialChoice;
import org.coursewright.model.estimate.UnitChoice;
import org.coursewright.model.estimate.WallChoice;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** A project as a scenario would have it: a copy with the scenario's choices made. The project itself is not changed. */
final class ScenarioCopy {

    private final EcoreUtil.Copier copier = new EcoreUtil.Copier();
    private final Project copy;

    private ScenarioCopy(Project project) {
        copy = (Project) copier.copy(project);
        copier.copyReferences();
    }

    static Project of(Project project, Scenario scenario) {
        ScenarioCopy copy = new ScenarioCopy(project);
        scenario.getWallChoices().forEach(copy::choose);
        scenario.getUnitChoices().forEach(copy::choose);
        if (scenario.getSpecials() == SpecialChoice.CUT) {
            copy.cutAllSpecials();
        }
        return copy.copy;
    }

    /** @return scenarios that have a mark, in the order of the project */
    static List<Scenario> scenarios(Project project) {
        return Stream.ofNullable(project.getEstimate()).flatMap(estimate -> estimate.getScenarios().stream()).filter(
                scenario -> scenario.getMark() != null && !scenario.getMark().isBlank()).toList();
    }

    private void choose(WallChoice choice) {
        for (Wall wall : choice.getWalls()) {
            Optional<Wall> copied = copied(wall, Wall.class);
            copied.ifPresent(each -> each.setBond(choice.getBond()));
            copied(choice.getUnitType(), UnitType.class).ifPresent(unit -> copied.ifPresent(each -> each.setUnitType(
                    unit)));
        }
    }

    private void choose(UnitChoice choice) {
        copied(choice.getUnitType(), UnitType.class).ifPresent(unit -> unit.setSource(choice.getSource()));
    }

    private void cutAllSpecials() {
        List<UnitType> types = new ArrayList<>();
        if (copy.getCatalogue() != null) {
            types.addAll(copy.getCatalogue().getUnitTypes());
        }
        types.forEach(type -> type.getSpecialLengths().clear());
    }

    private <T extends EObject> Optional<T> copied(T original, Class<T> type) {
        Map<EObject, EObject> copies = copier;
        return Optional.ofNullable(original).map(copies::get).map(type::cast);
    }
}
