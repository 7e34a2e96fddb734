package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.mm;
import static org.coursewright.bond.WallBuilder.wall;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Outside checks: lengths that need no cut. With units of length l, joints of j and a module M = l + j, a run of n units
 * is n·M − j long between two faces, n·M with one end against other masonry, n·M + j with both (coursing identities;
 * the Builder training manual of the U.S. Navy and the technical notes of the Brick Industry Association tabulate them).
 */
class CutFreeLengthsTest {

    /** Units as they are pressed or cast, each with its joint, which is kept exactly here. */
    enum Unit {
        /** Pressed earth, common practice, no source. */
        PRESSED_14_BY_10(in("14"), in("10"), in("1/2")),
        /** Concrete block of 16 in nominal length, U.S. Navy, Builder training manual. */
        CONCRETE_BLOCK(in("15 5/8"), in("7 5/8"), in("3/8")),
        /** Pressed earth, twice its width and a joint long; from memory of the practice with manual presses. */
        PRESSED_290_BY_140(mm(290), mm(140), mm(10)),
        /** The same with a joint of 15 mm. */
        PRESSED_295_BY_140(mm(295), mm(140), mm(15));

        private final Length length;
        private final Length width;
        private final Length joint;

        Unit(Length length, Length width, Length joint) {
            this.length = length;
            this.width = width;
            this.joint = joint;
        }

        Length module() {
            return length.plus(joint);
        }

        /** Whole units only, joints exactly as wide as the nominal one, any lap. */
        WallBuilder wall(Length wallLength) {
            return WallBuilder.wall(wallLength)
                    .stocked(new PieceStock(length, List.of(), Length.ofUnits(length.units() / 4),
                            Length.ofUnits(1), Length.ZERO))
                    .ruled(new JointRule(Length.ZERO, joint, joint, joint));
        }
    }

    private static WallLayout lay(WallBuilder wall) {
        WallFace face = wall.build();
        WallLayout layout = BondSolver.standard().solve(new BondRequest(List.of(face), List.of()), Progress.NONE)
                .walls().get(0);
        LayoutAudit.check(face, layout);
        return layout;
    }

    private static void assertUnits(int units, WallBuilder wall) {
        WallLayout layout = lay(wall.courses(1));
        assertThat(layout.cutPieces()).isZero();
        assertThat(layout.courses().get(0).runs()).singleElement()
                .satisfies(run -> assertThat(run.pieces()).hasSize(units));
    }

    @ParameterizedTest
    @EnumSource
    void wholeUnitsFillTheirClosedForms(Unit unit) {
        for (int n = 1; n <= 20; n++) {
            Length modules = unit.module().times(n);
            assertUnits(n, unit.wall(modules.minus(unit.joint)));
            assertUnits(n, unit.wall(modules).end(new WallEnd.Tied()));
            assertUnits(n, unit.wall(modules.plus(unit.joint)).start(new WallEnd.Tied()).end(new WallEnd.Tied()));
        }
    }

    /** With a joint that may not vary, the least step beside a closed form takes a cut or cannot be filled. */
    @ParameterizedTest
    @EnumSource
    void nextToTheClosedFormsSomethingIsCut(Unit unit) {
        for (int n = 2; n <= 12; n++) {
            for (int step = -1; step <= 1; step += 2) {
                WallLayout layout = lay(unit.wall(unit.module().times(n).minus(unit.joint).plus(Length.ofUnits(step)))
                        .courses(1));
                assertThat(layout.cutPieces() + layout.unfillable().size()).isPositive();
            }
        }
    }

    /** An opening n·M + j wide takes n units out of a course whose other units stay where they are. */
    @ParameterizedTest
    @EnumSource
    void openingOfNModulesAndAJointNeedsNoCut(Unit unit) {
        Length before = unit.module().times(3).minus(unit.joint);
        Length opening = unit.module().times(4).plus(unit.joint);
        WallLayout layout = lay(unit.wall(before.times(2).plus(opening)).courses(1)
                .obstacle(Obstacle.Kind.OPENING, before, before.plus(opening), 1, 1));

        assertThat(layout.cutPieces()).isZero();
        assertThat(layout.courses().get(0).runs()).extracting(run -> run.pieces().size()).containsExactly(3, 3);
        assertThat(before.times(2).plus(opening)).isEqualTo(unit.module().times(10).minus(unit.joint));
    }

    /**
     * Walls of a room hand over at every corner: each runs through at one end and stops a wall's thickness before the
     * other, so that n·M + t from outer face to outer face needs no cut.
     */
    @ParameterizedTest
    @EnumSource
    void wallBetweenCornersOfNModulesAndAThicknessNeedsNoCut(Unit unit) {
        for (int n = 3; n <= 8; n++) {
            BondResult result = room(unit, n, new JointRule(Length.ZERO, unit.joint, unit.joint, unit.joint));
            int units = n;
            assertThat(result.cutPieces()).isZero();
            assertThat(result.walls()).allSatisfy(wall -> assertThat(wall.courses())
                    .allSatisfy(course -> assertThat(course.runs().get(0).pieces()).hasSize(units)));
        }
    }

    private static BondResult room(Unit unit, int units, JointRule rule) {
        List<WallFace> walls = new ArrayList<>();
        for (int wall = 0; wall < 4; wall++) {
            walls.add(unit.wall(unit.module().times(units).plus(unit.width)).ruled(rule).mark("W" + wall).courses(4)
                    .start(new WallEnd.Corner("C" + wall, unit.width))
                    .end(new WallEnd.Corner("C" + (wall + 1) % 4, unit.width)).build());
        }
        return BondSolver.standard().solve(new BondRequest(walls, corners()), Progress.NONE);
    }

    private static List<Meeting> corners() {
        return IntStream.range(0, 4).mapToObj(corner -> new Meeting("C" + corner, Meeting.Kind.CORNER,
                List.of("W" + (corner + 3) % 4, "W" + corner), Optional.empty())).toList();
    }

    /**
     * The first stretcher over a corner laps the unit below by l − (t + j): 3 1/2 in of 14 in, which is exactly the 25 %
     * that the New Mexico Administrative Code 14.7.4.11 E asks for; 7 5/8 in of a block of 15 5/8 in; 140 mm for units of
     * the half bond l = 2 t + j (computed).
     */
    @ParameterizedTest
    @CsvSource({"PRESSED_14_BY_10, 88.9", "CONCRETE_BLOCK, 193.675", "PRESSED_290_BY_140, 140",
            "PRESSED_295_BY_140, 140"})
    void lapAtACornerIsTheUnitLessTheWallAndAJoint(Unit unit, BigDecimal millimetres) {
        Length lap = unit.length.minus(unit.width.plus(unit.joint));
        assertThat(new LengthRatio(lap, 1).toMillimetres()).isEqualByComparingTo(millimetres);
        assertThat(roomKeeps(unit, lap)).isTrue();
        assertThat(roomKeeps(unit, lap.plus(Length.ofUnits(1)))).isFalse();
    }

    private static boolean roomKeeps(Unit unit, Length lap) {
        BondResult result = room(unit, 6, new JointRule(lap, unit.joint, unit.joint, unit.joint));
        return result.cutPieces() + result.lapViolations() == 0;
    }

    /** Eight head joints opened from 5 to 10 mm gain 40 mm (published guidance on laying pressed blocks). */
    @Test
    void openingEightJointsByFiveMillimetresGainsForty() {
        Length tight = mm(290).times(9).plus(mm(5).times(8));
        WallBuilder wide = wall(tight.plus(mm(40)))
                .stocked(new PieceStock(mm(290), List.of(), mm(75), mm(5), mm(5)))
                .ruled(new JointRule(mm(70), mm(5), mm(5), mm(10)));
        assertUnits(9, wide);
    }

    /**
     * Nominal lengths of block walls by stretchers less a joint. Source: U.S. Navy, Builder training manual, table of
     * nominal lengths of concrete masonry walls by stretchers (from memory); actual length is nominal less 3/8 in.
     */
    @ParameterizedTest
    @CsvSource({"1, 16", "2, 32", "5, 80", "10, 160", "15, 240"})
    void blockWallsOfTheTableNeedNoCut(int stretchers, String nominal) {
        assertUnits(stretchers, Unit.CONCRETE_BLOCK.wall(in(nominal).minus(in("3/8"))));
    }

    /** Pieces of a quarter, half and three quarters of the module: M/4 − j, M/2 − j, 3 M/4 − j (computed). */
    @ParameterizedTest
    @CsvSource({"6 3/4, 2", "3 1/8, 4", "10 3/8, 4"})
    void fractionsOfTheModuleReplaceAUnit(String special, int parts) {
        Length module = in("14 1/2");
        Length piece = in(special);
        assertThat(piece.plus(in("1/2")).times(parts).units() % module.units()).isZero();
        WallLayout layout = lay(Unit.PRESSED_14_BY_10.wall(module.times(6).plus(piece))
                .stocked(new PieceStock(in("14"), List.of(piece), in("14"), in("1/4"), Length.ZERO)).courses(1));
        assertThat(layout.cutPieces()).isZero();
        assertThat(layout.unfillable()).isEmpty();
        assertThat(layout.courses().get(0).runs().get(0).pieces())
                .filteredOn(laid -> laid.kind() == Piece.Kind.SPECIAL).isNotEmpty();
    }
}
