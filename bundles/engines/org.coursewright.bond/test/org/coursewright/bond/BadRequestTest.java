package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.List;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** Requests that contradict themselves are refused with the thing, its value and what to do; huge ones are laid. */
class BadRequestTest {

    private static void assertRefused(BondRequest request, String... parts) {
        assertThatThrownBy(() -> BondSolver.standard().solve(request, Progress.NONE))
                .isInstanceOf(InvalidBondRequestException.class).message().contains(parts);
    }

    private static void assertRefused(WallBuilder wall, String... parts) {
        assertRefused(wall.alone(), parts);
    }

    @Test
    void leastJointAboveMostIsRefused() {
        assertRefused(wall("100").ruled(rule("3 1/2", "1", "1", "3/4")), "W1", "25.4 mm", "19.05 mm");
    }

    @Test
    void nominalJointOutsideItsRangeIsRefused() {
        assertRefused(wall("100").ruled(rule("3 1/2", "3/8", "1", "3/4")), "W1", "nominal", "25.4 mm");
    }

    @Test
    void lapAboveHalfAUnitIsRefused() {
        assertRefused(wall("100").ruled(rule("7 1/64", "3/8", "1/2", "3/4")), "W1", "half its unit", "355.6 mm");
    }

    @Test
    void specialLongerThanTheUnitIsRefused() {
        assertRefused(wall("100").stocked(stock("14", "15")), "special of 381 mm", "W1");
    }

    @Test
    void wallWithoutLengthIsRefused() {
        assertRefused(wall("0"), "W1", "0 mm");
    }

    @Test
    void wallOfAbsurdLengthIsRefused() {
        assertRefused(wall(Length.ofMillimetres(1_000_001)), "W1", "1000001 mm");
    }

    @Test
    void obstacleThatEndsBeforeItBeginsIsRefused() {
        assertRefused(wall("100").obstacle(Obstacle.Kind.OPENING, in("50"), in("40"), 1, 1), "OPENING", "W1");
    }

    @Test
    void duplicateMarksAreRefused() {
        WallFace face = wall("100").build();
        assertRefused(new BondRequest(List.of(face, face), List.of()), "W1", "rename");
    }

    @Test
    void unknownMeetingsAreRefused() {
        assertRefused(wall("100").end(new WallEnd.Corner("C9", in("10"))), "C9", "W1");
        assertRefused(wall("100").tee("T9", in("20"), in("30")), "T9", "W1");
    }

    @Test
    void pinningAWallThatIsNotThereIsRefused() {
        WallFace face = wall("100").end(new WallEnd.Corner("C", in("10"))).build();
        assertRefused(new BondRequest(List.of(face),
                List.of(new Meeting("C", Meeting.Kind.CORNER, List.of("W1"), Optional.of("W7")))), "W7", "C");
    }

    @Test
    void coursesThatAreNotNumberedInOrderAreRefused() {
        Course course = Course.level(1, 1, Length.ZERO, in("4 1/2"), in("100"));
        assertRefused(wall("100").courses(List.of(course, course)), "W1", "1 follows 1");
    }

    /** A hundred metres, five hundred courses, a cut step of 1/320 mm: laid, not refused, in bounded time. */
    @Test
    void extremesAreLaid() {
        PieceStock fine = new PieceStock(in("14"), List.of(in("6 3/4"), in("10")), in("3 1/2"), Length.ofUnits(1),
                Length.ZERO);
        WallFace face = wall(Length.ofMillimetres(100_000)).stocked(fine).courses(500)
                .obstacle(Obstacle.Kind.OPENING, in("333"), in("377 1/8"), 5, 300).build();
        WallLayout layout = BondSolver.standard().solve(new BondRequest(List.of(face), List.of()), Progress.NONE)
                .walls().get(0);

        assertThat(layout.courses()).hasSize(500);
        assertThat(layout.unfillable()).isEmpty();
        assertThat(layout.lapViolations()).isZero();
    }
}
