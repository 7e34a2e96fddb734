package org.coursewright.core.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.core.PlanBuilder.in;

import java.util.Optional;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.WallLayout;
import org.coursewright.core.PlanBuilder;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What cannot be is told on the element, and the rest of the building is laid. */
class BadInputLayoutTest {

    private final PlanBuilder plan = new PlanBuilder();
    private Wall wrong = BuildingFactory.eINSTANCE.createWall();

    @BeforeEach
    void drawAWrongWallAndASoundOne() {
        wrong = plan.wall("W1", "0", "0", "240", "0");
        plan.wall("W2", "0", "300", "240", "300");
    }

    private LayoutOutcome lay() {
        return new BuildingLayout(BondSolver.standard()).lay(plan.project(), Progress.NONE);
    }

    private static Optional<WallLayout> layout(LayoutOutcome outcome, String mark) {
        return outcome.result().walls().stream().filter(wall -> wall.mark().equals(mark)).findFirst();
    }

    private void assertTold(String code, String element) {
        LayoutOutcome outcome = lay();
        assertThat(outcome.findings()).filteredOn(finding -> finding.severity() == Severity.INVALID).singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo(code);
                    assertThat(finding.element().name()).isEqualTo(element);
                });
        assertThat(layout(outcome, "W1")).isEmpty();
        assertThat(layout(outcome, "W2")).get().satisfies(wall -> assertThat(wall.courses()).hasSize(20));
    }

    private BondRule rule() {
        wrong.setBondRule(BuildingFactory.eINSTANCE.createBondRule());
        return wrong.getBondRule();
    }

    @Test
    void leastJointAboveMost() {
        rule().setHeadLeast(in("1"));
        assertTold("rule.head-joint", "wall W1");
    }

    @Test
    void bedJointLessThanNothing() {
        rule().setBedNominal(in("1").negated());
        assertTold("rule.bed-joint", "wall W1");
    }

    @Test
    void lapAboveHalfAUnit() {
        rule().setLeastLap(in("7 1/16"));
        assertTold("rule.lap", "wall W1");
    }

    @Test
    void specialLongerThanItsUnit() {
        UnitType unit = CatalogueFactory.eINSTANCE.createUnitType();
        unit.setMark("B16");
        unit.setLength(in("14"));
        unit.setWidth(in("10"));
        unit.setHeight(in("4"));
        unit.getSpecialLengths().add(in("16"));
        plan.project().getCatalogue().getUnitTypes().add(unit);
        wrong.setUnitType(unit);
        assertTold("unit.special-length", "unit B16");
    }

    @Test
    void openingWiderThanItsWall() {
        plan.opening(wrong, "O1", "0", "300", "0", "45");
        assertTold("opening.beyond-wall", "opening O1 in wall W1");
    }

    /** A pier of 2 in: an error on the wall's courses, all the rest of the wall and of the building is laid. */
    @Test
    void runShorterThanTheShortestPiece() {
        plan.opening(wrong, "O1", "2", "36", "0", "45");

        LayoutOutcome outcome = lay();

        assertThat(outcome.findings()).filteredOn(finding -> finding.severity() == Severity.ERROR).hasSize(10)
                .allSatisfy(finding -> assertThat(finding.message()).contains("is too short: the shortest piece is"))
                .extracting(Finding::code).containsOnly("lay.unfillable");
        assertThat(layout(outcome, "W1")).get().satisfies(
                wall -> assertThat(wall.courses()).hasSize(20).allMatch(course -> !course.runs().isEmpty()));
        assertThat(layout(outcome, "W2")).isPresent();
    }
}
