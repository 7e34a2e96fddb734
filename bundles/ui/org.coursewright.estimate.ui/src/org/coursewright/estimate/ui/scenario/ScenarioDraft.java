package org.coursewright.estimate.ui.scenario;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitSource;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.estimate.SpecialChoice;
import org.coursewright.model.estimate.UnitChoice;
import org.coursewright.model.estimate.WallChoice;

/**
 * A scenario while somebody says what is different in it.
 *
 * @param mark what it is called, empty as long as nothing is typed
 * @param note what is different, for people; may be empty
 * @param specials as stocked or all cut
 * @param walls laid otherwise
 * @param bond that they are laid in
 * @param laidOf what they are laid of, empty for the same units as planned
 * @param units that come from elsewhere
 * @param source where they come from
 */
record ScenarioDraft(String mark, String note, SpecialChoice specials, List<Wall> walls, Bond bond,
        Optional<UnitType> laidOf, List<UnitType> units, UnitSource source) {

    ScenarioDraft {
        walls = List.copyOf(walls);
        units = List.copyOf(units);
    }

    /** @return whether anything would be built or bought otherwise than planned */
    boolean isDifferent() {
        return specials != SpecialChoice.AS_STOCKED
                || walls.stream().anyMatch(this::isLaidOtherwise)
                || units.stream().anyMatch(unit -> unit.getSource() != source);
    }

    private boolean isLaidOtherwise(Wall wall) {
        return wall.getBond() != bond || laidOf.filter(unit -> unit != wall.getUnitType()).isPresent();
    }

    /** @return a new scenario, in no project yet */
    Scenario scenario() {
        Scenario scenario = EstimateFactory.eINSTANCE.createScenario();
        scenario.setMark(mark);
        scenario.setNote(note.isEmpty() ? null : note);
        scenario.setSpecials(specials);
        if (!walls.isEmpty()) {
            scenario.getWallChoices().add(wallChoice());
        }
        units.forEach(unit -> scenario.getUnitChoices().add(choice(unit)));
        return scenario;
    }

    private WallChoice wallChoice() {
        WallChoice choice = EstimateFactory.eINSTANCE.createWallChoice();
        choice.getWalls().addAll(walls);
        choice.setBond(bond);
        laidOf.ifPresent(choice::setUnitType);
        return choice;
    }

    private UnitChoice choice(UnitType unit) {
        UnitChoice choice = EstimateFactory.eINSTANCE.createUnitChoice();
        choice.setUnitType(unit);
        choice.setSource(source);
        return choice;
    }
}
