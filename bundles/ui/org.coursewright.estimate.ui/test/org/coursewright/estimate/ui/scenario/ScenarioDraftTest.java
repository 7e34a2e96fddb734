package org.coursewright.estimate.ui.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.building.Bond;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitSource;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.estimate.SpecialChoice;
import org.junit.jupiter.api.Test;

/** What is said in the dialog, and the scenario that comes of it. */
class ScenarioDraftTest {

    private final UnitType block = CatalogueFactory.eINSTANCE.createUnitType();
    private final UnitType brick = CatalogueFactory.eINSTANCE.createUnitType();
    private final Wall wall = BuildingFactory.eINSTANCE.createWall();

    ScenarioDraftTest() {
        block.setSource(UnitSource.MADE_ON_SITE);
        brick.setSource(UnitSource.BOUGHT);
        wall.setUnitType(block);
        wall.setBond(Bond.STRETCHER);
    }

    private ScenarioDraft draft(SpecialChoice specials, Bond bond, Optional<UnitType> laidOf, List<UnitType> units) {
        return new ScenarioDraft("other", "", specials, List.of(wall), bond, laidOf, units, UnitSource.BOUGHT);
    }

    @Test
    void choosingWhatIsPlannedAnywayIsNoDifference() {
        assertThat(draft(SpecialChoice.AS_STOCKED, Bond.STRETCHER, Optional.empty(), List.of(brick)).isDifferent())
                .isFalse();
        assertThat(draft(SpecialChoice.AS_STOCKED, Bond.STRETCHER, Optional.of(block), List.of()).isDifferent())
                .isFalse();
    }

    @Test
    void eachKindOfChoiceIsADifference() {
        assertThat(draft(SpecialChoice.CUT, Bond.STRETCHER, Optional.empty(), List.of()).isDifferent()).isTrue();
        assertThat(draft(SpecialChoice.AS_STOCKED, Bond.HEADER, Optional.empty(), List.of()).isDifferent()).isTrue();
        assertThat(draft(SpecialChoice.AS_STOCKED, Bond.STRETCHER, Optional.of(brick), List.of()).isDifferent())
                .isTrue();
        assertThat(draft(SpecialChoice.AS_STOCKED, Bond.STRETCHER, Optional.empty(), List.of(block)).isDifferent())
                .isTrue();
    }

    @Test
    void scenarioHoldsWhatWasSaid() {
        Scenario scenario = draft(SpecialChoice.CUT, Bond.HEADER, Optional.of(brick), List.of(block)).scenario();
        assertThat(scenario.getMark()).isEqualTo("other");
        assertThat(scenario.getNote()).isNull();
        assertThat(scenario.getSpecials()).isEqualTo(SpecialChoice.CUT);
        assertThat(scenario.getWallChoices()).singleElement().satisfies(choice -> {
            assertThat(choice.getWalls()).containsExactly(wall);
            assertThat(choice.getBond()).isEqualTo(Bond.HEADER);
            assertThat(choice.getUnitType()).isSameAs(brick);
        });
        assertThat(scenario.getUnitChoices()).singleElement().satisfies(choice -> {
            assertThat(choice.getUnitType()).isSameAs(block);
            assertThat(choice.getSource()).isEqualTo(UnitSource.BOUGHT);
        });
    }

    @Test
    void wallsThatAreNotTickedMakeNoChoice() {
        assertThat(new ScenarioDraft("cut", "All cut.", SpecialChoice.CUT, List.of(), Bond.STRETCHER, Optional.empty(),
                List.of(), UnitSource.BOUGHT).scenario()).satisfies(scenario -> {
                    assertThat(scenario.getWallChoices()).isEmpty();
                    assertThat(scenario.getUnitChoices()).isEmpty();
                    assertThat(scenario.getNote()).isEqualTo("All cut.");
                });
    }
}
