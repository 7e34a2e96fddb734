package org.coursewright.core.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.stream.Stream;

import org.coursewright.bond.BondSolver;
import org.coursewright.core.PlanBuilder;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.measure.Progress;
import org.coursewright.measure.Quantity;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.junit.jupiter.api.Test;

class ProjectTakeoffTest {

    private final PlanBuilder plan = new PlanBuilder();

    /**
     * A square room of 242 in between outer faces, 90 in high, of units of 14 × 10 × 4 in with joints of 1/2 in. In each of
     * 20 courses of each of 4 walls 16 whole units and 16 head joints fill 232 in.
     *
     * <p>By hand: 4 · 20 · 16 = 1280 units, with 5 % breakage 1344. Mortar of a course: bed 232 · 10 · 1/2 = 1160 in³, heads 16
     * · 1/2 · 4 · 10 = 320 in³, together 1480 in³. First courses 4 · 1480 = 5920 in³ = 3.425926 ft³, with 25 % waste 4.282407 ft³;
     * other courses 76 · 1480 = 112 480 in³ = 65.092593 ft³, with waste 81.365741 ft³. Outer faces 4 · 242 · 90 = 87 120 in² =
     * 605 ft².
     */
    @Test
    void roomOnTheModuleIsAsWorkedByHand() {
        room();
        TakeoffOutcome outcome = takeOff();

        assertThat(outcome.units()).containsExactly(
                new UnitsTaken("B14", "stretcher", new UnitCount(1280, 0, 0), 0, true, 1344, 0, 0));
        assertThat(line(outcome, "units.ordered").quantity()).isEqualTo(Quantity.fromStored("1344 H87"));
        assertThat(feet(outcome, "mortar of first courses", "mortar.net")).isCloseTo(3.425926, within(1e-6));
        assertThat(feet(outcome, "mortar of first courses", "mortar.ordered")).isCloseTo(4.282407, within(1e-6));
        assertThat(feet(outcome, "mortar of other courses", "mortar.net")).isCloseTo(65.092593, within(1e-6));
        assertThat(feet(outcome, "mortar of other courses", "mortar.ordered")).isCloseTo(81.365741, within(1e-6));
        assertThat(feet(outcome, "wall faces, one side", "face.net")).isCloseTo(605, within(1e-6));
    }

    @Test
    void courseOfTheRoomIsAsWorkedByHand() {
        room();
        CourseMortar course = takeOff().walls().get(2).courses().get(7);
        // 1160 and 320 in³ of 0.000016387064 m³ each
        assertThat(course.bed().value()).isEqualByComparingTo("0.01900899424");
        assertThat(course.head().value()).isEqualByComparingTo("0.00524386048");
        assertThat(course.besideCuts().value()).isZero();
        assertThat(course.lines()).hasSize(2).allSatisfy(line -> {
            assertThat(line.item()).isEqualTo("W3/8");
            assertThat(line.inputs()).isNotEmpty();
        });
    }

    /** Two lintels over 36 in with bearings of 12 in are 2 · 60 in = 10 ft; 251 · 90 − 2 · 36 · 45 in² = 134.375 ft². */
    @Test
    void lintelsAndOpeningsAreAsWorkedByHand() {
        wallWithTwoWindows();
        TakeoffOutcome outcome = takeOff();

        assertThat(line(outcome, "lintels.count").quantity()).isEqualTo(Quantity.fromStored("2 H87"));
        assertThat(line(outcome, "lintels.length").elements()).containsExactly("W1/O1", "W1/O2");
        assertThat(feet(outcome, "lintel L", "lintels.length")).isCloseTo(10, within(1e-9));
        assertThat(feet(outcome, "wall faces, one side", "face.net")).isCloseTo(134.375, within(1e-6));
    }

    @Test
    void wallsAddUpToTheTotalExactly() {
        wallWithTwoWindows();
        plan.wall("W2", "0", "300", "251", "300", Bond.HEADER, "45");
        LayoutOutcome layout = lay();
        TakeoffOutcome outcome = ProjectTakeoff.of(plan.project(), layout, Progress.NONE);

        assertThat(count(outcome.walls().stream().map(WallTaken::pieces))).isEqualTo(layout.totals());
        assertThat(count(outcome.units().stream().map(UnitsTaken::pieces))).isEqualTo(layout.totals());
        assertThat(outcome.units()).extracting(UnitsTaken::bond).containsExactly("stretcher", "header");
        assertThat(sum(outcome.walls().stream().flatMap(wall -> wall.courses().stream()).map(CourseMortar::net)))
                .isEqualByComparingTo(sum(outcome.lines().stream().filter(line -> line.formula().equals("mortar.net"))
                        .map(TakeoffLine::quantity)));
        assertThat(sum(outcome.walls().stream().map(wall -> wall.face().quantity())))
                .isEqualByComparingTo(line(outcome, "face.net").quantity().value());
    }

    @Test
    void everyLineTellsHowItCameAbout() {
        wallWithTwoWindows();
        TakeoffOutcome outcome = takeOff();
        assertThat(outcome.lines()).isNotEmpty().allSatisfy(line -> {
            assertThat(line.source()).isNotBlank();
            assertThat(line.elements()).isNotEmpty();
        });
        assertThat(outcome.assumptions()).first().isEqualTo("B14 measures 1'-2\" × 10\" × 4\"; stretcher bond, "
                + "bed joint 1/2\", head joint about 1/2\", saw kerf 3/16\".");
    }

    @Test
    void oneWallIsTakenOffAlone() {
        room();
        TakeoffOutcome outcome = ProjectTakeoff.ofWall(plan.project(), lay(), "W2", Progress.NONE);
        assertThat(outcome.walls()).extracting(WallTaken::mark).containsExactly("W2");
        assertThat(line(outcome, "units.ordered").quantity()).isEqualTo(Quantity.fromStored("336 H87"));
        assertThatThrownBy(() -> ProjectTakeoff.ofWall(plan.project(), lay(), "W9", Progress.NONE))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("W9");
    }

    @Test
    void projectWithoutWallsTakesNothing() {
        TakeoffOutcome outcome = takeOff();
        assertThat(outcome.units()).isEmpty();
        assertThat(line(outcome, "face.net").quantity().value()).isZero();
    }

    @Test
    void resultFollowsAnEdit() {
        Opening opening = wallWithTwoWindows();
        DerivationGraph graph = new DerivationGraph(plan.project());
        TakeoffOutcome before = graph.get(TakeoffResults.TAKEOFF);
        assertThat(before).isEqualTo(takeOff());
        opening.setWidth(PlanBuilder.in("50 1/2"));
        assertThat(graph.get(TakeoffResults.TAKEOFF)).isNotEqualTo(before).isEqualTo(takeOff());
        graph.close();
    }

    private void room() {
        plan.wall("W1", "0", "0", "232", "0");
        plan.wall("W2", "232", "0", "232", "232");
        plan.wall("W3", "232", "232", "0", "232");
        plan.wall("W4", "0", "232", "0", "0");
    }

    private Opening wallWithTwoWindows() {
        Wall wall = plan.wall("W1", "0", "0", "251", "0");
        Opening first = plan.opening(wall, "O1", "43 1/2", "36", "27", "45");
        first.setLintelType(plan.lintel("L", "9", "12"));
        plan.opening(wall, "O2", "159 1/2", "36", "27", "45").setLintelType(first.getLintelType());
        return first;
    }

    private LayoutOutcome lay() {
        return new BuildingLayout(BondSolver.standard()).lay(plan.project(), Progress.NONE);
    }

    private TakeoffOutcome takeOff() {
        return ProjectTakeoff.of(plan.project(), lay(), Progress.NONE);
    }

    private static TakeoffLine line(TakeoffOutcome outcome, String formula) {
        return outcome.lines().stream().filter(line -> line.formula().equals(formula)).findFirst().orElseThrow();
    }

    private static double feet(TakeoffOutcome outcome, String item, String formula) {
        return outcome.lines().stream().filter(line -> line.item().equals(item) && line.formula().equals(formula))
                .findFirst().flatMap(TakeoffLine::inFeet).orElseThrow().value().doubleValue();
    }

    private static UnitCount count(Stream<UnitCount> counts) {
        return counts.reduce(new UnitCount(0, 0, 0), (a, b) -> new UnitCount(a.whole() + b.whole(), a.special() + b
                .special(), a.cut() + b.cut()));
    }

    private static BigDecimal sum(Stream<Quantity> quantities) {
        return quantities.map(Quantity::value).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
