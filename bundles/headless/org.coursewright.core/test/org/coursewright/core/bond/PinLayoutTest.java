package org.coursewright.core.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.core.PlanBuilder.in;

import java.util.List;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Pin;
import org.coursewright.bond.Run;
import org.coursewright.core.PlanBuilder;
import org.coursewright.core.finding.Finding;
import org.coursewright.measure.LengthRatio;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.GaugePin;
import org.coursewright.model.building.PiecePin;
import org.coursewright.model.building.Wall;
import org.junit.jupiter.api.Test;

/** What somebody decided about single runs in the project reaches the engine, and what comes of it the findings. */
class PinLayoutTest {

    private final PlanBuilder plan = new PlanBuilder();
    private final Wall wall = plan.wall("W1", "0", "0", "144", "0");

    private LayoutOutcome lay() {
        return new BuildingLayout(BondSolver.standard()).lay(plan.project(), Progress.NONE);
    }

    private GaugePin gauge(int course, String at) {
        GaugePin pin = BuildingFactory.eINSTANCE.createGaugePin();
        pin.setCourse(course);
        pin.setAt(in(at));
        wall.getPins().add(pin);
        return pin;
    }

    private PiecePin piece(int course, String at) {
        PiecePin pin = BuildingFactory.eINSTANCE.createPiecePin();
        pin.setCourse(course);
        pin.setAt(in(at));
        wall.getPins().add(pin);
        return pin;
    }

    private static Run run(LayoutOutcome outcome, int course) {
        return outcome.result().walls().get(0).courses().get(course - 1).runs().get(0);
    }

    private static List<Finding> told(LayoutOutcome outcome, String code) {
        return outcome.findings().stream().filter(finding -> finding.code().equals(code)).toList();
    }

    @Test
    void pinsOfTheProjectAreKept() {
        gauge(1, "20").setJoint(in("1/2"));
        piece(3, "60").setLength(in("7"));

        LayoutOutcome outcome = lay();

        assertThat(outcome.faces().get(0).pins()).containsExactly(new Pin.OfJoint(1, in("20"), in("1/2")),
                new Pin.OfPiece(3, in("60"), in("7")));
        assertThat(run(outcome, 1).joint()).get()
                .satisfies(joint -> assertThat(joint).isEqualByComparingTo(new LengthRatio(in("1/2"), 1)));
        assertThat(run(outcome, 3).pieces()).anyMatch(laid -> laid.length().equals(in("7")));
        assertThat(outcome.result().walls().get(0).unfillable()).isEmpty();
    }

    @Test
    void pinThatCannotBeKeptIsAnErrorOnItsCourseAndTheRestIsLaid() {
        piece(2, "60").setLength(in("1"));

        LayoutOutcome outcome = lay();

        assertThat(told(outcome, "lay.unfillable")).singleElement().satisfies(finding -> {
            assertThat(finding.element().name()).isEqualTo("wall W1, course 2");
            assertThat(finding.message())
                    .isEqualTo(
                            "The run of 12'-0\" could be filled, but not as it is pinned. Change the pin or take it out.");
        });
        assertThat(outcome.result().walls().get(0).courses()).filteredOn(course -> course.runs().size() == 1)
                .hasSize(19);
    }

    @Test
    void pinInNoRunAndPinThatFixesNothingAreTold() {
        gauge(99, "20").setJoint(in("1/2"));
        gauge(1, "30");

        LayoutOutcome outcome = lay();

        assertThat(told(outcome, "pin.no-run")).singleElement().satisfies(
                finding -> assertThat(finding.element().name()).isEqualTo("wall W1, course 99"));
        assertThat(told(outcome, "pin.empty")).singleElement().satisfies(
                finding -> assertThat(finding.element().name()).isEqualTo("wall W1, course 1"));
        assertThat(run(outcome, 1).pieces()).isNotEmpty();
    }
}
