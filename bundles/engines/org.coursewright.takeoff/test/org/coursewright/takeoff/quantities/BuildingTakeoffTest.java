package org.coursewright.takeoff.quantities;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.nesting.CutPlanner;
import org.coursewright.takeoff.quantities.LaidPiece.Kind;
import org.junit.jupiter.api.Test;

class BuildingTakeoffTest {

    private static final UnitShape BLOCK = new UnitShape("block", mm(290), mm(140), mm(90));
    private static final UnitRule RULE = new UnitRule(mm(4), false, Fraction.of("0.05"));
    private static final MortarRule MORTAR = new MortarRule("cement", Fraction.of("0.15"), "earth", Fraction.of(
            "0.30"), JointFill.FULL);

    /** Two courses of two whole units and one of 140 mm, twice: 8 whole, 4 of 140 mm out of 2, (8 + 2) × 1.05 up to 11. */
    @Test
    void cutPiecesOfAllWallsAreNestedTogether() {
        UnitOrder order = measure(wall("W1"), wall("W2")).units().get(0);
        assertThat(order.walls()).containsExactly("W1", "W2");
        assertThat(order.pieces().whole()).isEqualTo(8);
        assertThat(order.pieces().cuts()).containsExactly(entry(mm(140), 4L));
        assertThat(order.cutting().units()).isEqualTo(2);
        assertThat(order.consumed()).isEqualTo(10);
        assertThat(order.ordered()).isEqualTo(11);
    }

    /** A course takes 1428 cm³: 2 × 1.428 L × 1.15 of cement mortar and 2 × 1.428 L × 1.30 of earth mortar. */
    @Test
    void firstCourseHasItsOwnMixAndWaste() {
        List<MortarOrder> mortars = measure(wall("W1"), wall("W2")).mortars();
        assertThat(mortars).extracting(MortarOrder::mix).containsExactly("cement", "earth");
        assertThat(mortars.get(0).courses()).containsExactly("W1/1", "W2/1");
        assertThat(mortars.get(0).ordered().in(UnitCode.LITRE)).isEqualTo(Fraction.of("3.2844"));
        assertThat(mortars.get(1).courses()).containsExactly("W1/2", "W2/2");
        assertThat(mortars.get(1).ordered().in(UnitCode.LITRE)).isEqualTo(Fraction.of("3.7128"));
    }

    @Test
    void oneMixForAllCoursesIsOneOrder() {
        MortarRule one = new MortarRule("earth", Fraction.ZERO, "earth", Fraction.ZERO, JointFill.FULL);
        List<MortarOrder> mortars = takeoff(one).measure(List.of(wall("W1")), Progress.NONE).mortars();
        assertThat(mortars).hasSize(1);
        assertThat(mortars.get(0).ordered().in(UnitCode.LITRE)).isEqualTo(Fraction.of("2.856"));
    }

    @Test
    void headerAndStretcherWallsOfOneTypeAreCutApart() {
        LaidRun headers = new LaidRun(mm(0), mm(290), mm(10), false, false, List.of(LaidPiece.square(mm(140),
                Kind.WHOLE), LaidPiece.square(mm(140), Kind.CUT)));
        LaidWall header = new LaidWall("H", BLOCK, mm(290), List.of(new LaidCourse(1, mm(90), mm(10), List.of(
                headers))));
        List<UnitOrder> orders = measure(wall("W1"), header).units();
        assertThat(orders).extracting(UnitOrder::face).containsExactly(mm(290), mm(140));
        assertThat(orders.get(1).cutting().units()).isEqualTo(1);
    }

    /** A wall of whole units only has no part in the line of what is cut. */
    @Test
    void lineIsTakenFromTheWallsThatHavePiecesOfItsKind() {
        LaidRun whole = new LaidRun(mm(0), mm(290), mm(0), false, false,
                List.of(LaidPiece.square(mm(290), Kind.WHOLE)));
        LaidWall plain = new LaidWall("P", BLOCK, mm(140), List.of(new LaidCourse(1, mm(90), mm(10), List.of(whole))));
        List<Figure> figures = TakeoffFigures.of(measure(wall("W1"), plain));

        assertThat(taken(figures, TakeoffFormulas.WHOLE)).containsExactly("W1", "P");
        assertThat(taken(figures, TakeoffFormulas.CUTTING)).containsExactly("W1");
        assertThat(taken(figures, TakeoffFormulas.ORDERED)).containsExactly("W1", "P");
    }

    private static List<String> taken(List<Figure> figures, Formula formula) {
        return figures.stream().map(Figure::trace).filter(trace -> trace.formula().equals(formula)).findFirst()
                .orElseThrow().elements();
    }

    @Test
    void piecesInLowCoursesAreCounted() {
        LaidWall low = new LaidWall("L", BLOCK, mm(140), List.of(new LaidCourse(1, mm(50), mm(10), List.of(run()))));
        assertThat(measure(wall("W1"), low).units().get(0).lowPieces()).isEqualTo(3);
    }

    @Test
    void unitTypeWithoutRuleIsRefusedByName() {
        BuildingTakeoff takeoff = new BuildingTakeoff(MORTAR, Map.of(), new CutPlanner());
        assertThatThrownBy(() -> takeoff.measure(List.of(wall("W1")), Progress.NONE)).hasMessageContaining("block");
    }

    @Test
    void oneTypeInTwoSizesIsRefused() {
        UnitShape other = new UnitShape("block", mm(290), mm(140), mm(100));
        LaidWall wall = new LaidWall("W9", other, mm(140), List.of());
        assertThatThrownBy(() -> measure(wall("W1"), wall)).hasMessageContaining("W9").hasMessageContaining("block");
    }

    /** Whatever the order of the walls, and however they are grouped into mixes, the parts are the whole. */
    @Test
    void mortarsAddUpToWhatTheWallsTake() {
        Random random = new Random(7);
        for (int i = 0; i < 40; i++) {
            List<LaidWall> walls = new ArrayList<>();
            Map<String, UnitRule> rules = new HashMap<>();
            for (int n = 0; n < 4; n++) {
                LaidWall wall = Walls.random(random);
                String type = "U" + n;
                walls.add(new LaidWall("W" + n, new UnitShape(type, wall.unit().length(), wall.unit().width(), wall
                        .unit().height()), wall.thickness(), wall.courses()));
                rules.put(type, RULE);
            }
            BuildingTakeoff takeoff = new BuildingTakeoff(MORTAR, rules, new CutPlanner());
            BuildingQuantities quantities = takeoff.measure(walls, Progress.NONE);
            Volume byWall = quantities.walls().stream().map(wall -> wall.mortar().net()).reduce(Volume.ZERO,
                    Volume::plus);
            Volume byMix = quantities.mortars().stream().map(order -> order.net().net()).reduce(Volume.ZERO,
                    Volume::plus);
            assertThat(byMix).isEqualTo(byWall);
            Collections.reverse(walls);
            assertThat(takeoff.measure(walls, Progress.NONE).mortars().get(0).net()).isEqualTo(quantities.mortars().get(
                    0).net());
        }
    }

    @Test
    void figuresNameFormulaInputsAndElements() {
        List<Figure> figures = TakeoffFigures.of(measure(wall("W1"), wall("W2")));
        Figure ordered = figures.stream().filter(figure -> figure.trace().formula().id().equals("units.ordered"))
                .findFirst().orElseThrow();
        assertThat(ordered.quantity()).hasToString("11 H87");
        assertThat(ordered.trace().elements()).containsExactly("W1", "W2");
        assertThat(ordered.trace().inputs()).extracting(TraceInput::symbol).containsExactly("whole", "cutting",
                "breakage");
        assertThat(figures).extracting(figure -> figure.trace().formula().id()).containsExactly("units.whole",
                "units.cutting", "units.ordered", "mortar.net", "mortar.ordered", "mortar.net", "mortar.ordered");
    }

    @Test
    void specialsAndPiecesOfLowCoursesHaveFiguresOfTheirOwn() {
        LaidRun half = new LaidRun(mm(0), mm(440), mm(10), false, false, List.of(LaidPiece.square(mm(290), Kind.WHOLE),
                LaidPiece.square(mm(140), Kind.SPECIAL)));
        LaidWall wall = new LaidWall("W1", BLOCK, mm(140), List.of(new LaidCourse(1, mm(80), mm(10), List.of(half))));
        List<Figure> figures = TakeoffFigures.of(measure(wall));
        assertThat(figures).extracting(figure -> figure.trace().formula().id()).startsWith("units.whole",
                "units.specials", "units.cutting", "units.low", "units.ordered");
        // one special and 5 % breakage are two
        assertThat(figures.get(1).item()).isEqualTo("block 140 mm");
        assertThat(figures.get(1).quantity()).hasToString("2 H87");
        assertThat(figures.get(3).quantity()).hasToString("2 H87");
    }

    /** Worked again from nothing but the inputs that are shown. */
    @Test
    void figuresOfACourseCanBeWorkedAgainFromTheirInputs() {
        LaidWall wall = wall("W1");
        List<Figure> figures = TakeoffFigures.ofCourse(wall, wall.courses().get(0), JointFill.FULL);
        assertThat(figures).extracting(Figure::item).containsExactly("mortar.bed", "mortar.head", "mortar.besideCuts");
        assertThat(figures.get(0).quantity().value()).isEqualByComparingTo(product(figures.get(0), "length",
                "bedJoint", "thickness", "bedFill"));
        BigDecimal besideCuts = product(figures.get(2), "jointTotal", "besideCuts", "height", "thickness", "headFill")
                .divide(value(figures.get(2), "joints"));
        assertThat(figures.get(2).quantity().value()).isEqualByComparingTo(besideCuts);
    }

    private static BigDecimal product(Figure figure, String... symbols) {
        BigDecimal product = new BigDecimal("1E-9");
        for (String symbol : symbols) {
            product = product.multiply(value(figure, symbol));
        }
        return product;
    }

    private static BigDecimal value(Figure figure, String symbol) {
        return figure.trace().inputs().stream().filter(input -> input.symbol().equals(symbol)).findFirst().orElseThrow()
                .value().value();
    }

    private static BuildingQuantities measure(LaidWall... walls) {
        return takeoff(MORTAR).measure(List.of(walls), Progress.NONE);
    }

    private static BuildingTakeoff takeoff(MortarRule rule) {
        return new BuildingTakeoff(rule, Map.of("block", RULE), new CutPlanner());
    }

    private static LaidWall wall(String mark) {
        return new LaidWall(mark, BLOCK, mm(140), List.of(new LaidCourse(1, mm(90), mm(10), List.of(run())),
                new LaidCourse(2, mm(90), mm(10), List.of(run()))));
    }

    private static LaidRun run() {
        return new LaidRun(mm(0), mm(750), mm(30), false, true, List.of(LaidPiece.square(mm(290), Kind.WHOLE), LaidPiece
                .square(mm(290), Kind.WHOLE), LaidPiece.square(mm(140), Kind.CUT)));
    }

    private static Length mm(long millimetres) {
        return Length.ofMillimetres(millimetres);
    }
}
