package org.coursewright.estimate.ui.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

import org.coursewright.core.bond.UnitCount;
import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.junit.jupiter.api.Test;

class TakenFromTest {

    private static final Set<String> WALLS = Set.of("W1", "W2", "P/1");

    @Test
    void coursesOfAWallAreOneEntry() {
        List<TakenFrom> taken = taken(line("mortar.net", "W1/1", "W2/1", "W1/2"));
        assertThat(taken).extracting(TakenFrom::wall).containsExactly("W1", "W2");
        assertThat(taken.get(0).courses()).containsExactly(1, 2);
        assertThat(taken.get(0).onlyCourse()).isEmpty();
        assertThat(taken.get(1).onlyCourse()).contains(1);
    }

    @Test
    void openingLeadsToItsWall() {
        assertThat(taken(line("lintels.count", "W1/D1"))).extracting(TakenFrom::wall)
                .containsExactly("W1");
    }

    @Test
    void wallWithASlashInItsMarkIsNoCourse() {
        assertThat(taken(line("units.whole", "P/1"))).extracting(TakenFrom::wall).containsExactly("P/1");
    }

    @Test
    void whatIsNoWallIsLeftOut() {
        assertThat(taken(line("beam.concrete", "grade beam G1", "mortar earth"))).isEmpty();
    }

    @Test
    void linesThatCountPiecesSayOfWhichKind() {
        assertThat(taken(line("units.cutting", "W1")).get(0).kind()).contains("cut");
        assertThat(taken(line("face.net", "W1")).get(0).kind()).isEqualTo(Optional.empty());
    }

    @Test
    void linesThatCountPiecesNameTheCoursesInWhichTheyLie() {
        TakenFrom cut = taken(line("units.cutting", "W1")).get(0);
        assertThat(cut.courses()).containsExactly(2, 3, 4, 6);
        assertThat(cut.ranges()).containsExactly(List.of(2, 4), List.of(6, 6));
        assertThat(cut.onlyCourse()).isEmpty();
        assertThat(taken(line("units.specials", "W1")).get(0).onlyCourse()).contains(6);
        assertThat(taken(line("units.whole", "W2")).get(0).courses()).as("not laid").isEmpty();
    }

    /** Cut pieces in the courses 2, 3, 4 and 6 of W1, specials in 6 too. */
    private static SortedMap<Integer, UnitCount> laid(String wall) {
        SortedMap<Integer, UnitCount> courses = new TreeMap<>();
        if (wall.equals("W1")) {
            IntStream.rangeClosed(1, 7).forEach(course -> courses.put(course, new UnitCount(10, course == 6 ? 2 : 0,
                    course == 2 || course == 3 || course == 4 || course == 6 ? 1 : 0)));
        }
        return courses;
    }

    private static List<TakenFrom> taken(TakeoffLine line) {
        return TakenFrom.of(line, WALLS, TakenFromTest::laid);
    }

    private static TakeoffLine line(String formula, String... elements) {
        return new TakeoffLine("item", Quantity.of(BigDecimal.ONE, UnitCode.PIECE), formula, "", "geometry", List.of(),
                List.of(elements));
    }
}
