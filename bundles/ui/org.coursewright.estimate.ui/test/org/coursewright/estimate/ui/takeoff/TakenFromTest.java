package org.coursewright.estimate.ui.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.junit.jupiter.api.Test;

class TakenFromTest {

    private static final Set<String> WALLS = Set.of("W1", "W2", "P/1");

    @Test
    void coursesOfAWallAreOneEntry() {
        List<TakenFrom> taken = TakenFrom.of(line("mortar.net", "W1/1", "W2/1", "W1/2"), WALLS);
        assertThat(taken).extracting(TakenFrom::wall).containsExactly("W1", "W2");
        assertThat(taken.get(0).courses()).containsExactly(1, 2);
        assertThat(taken.get(0).onlyCourse()).isEmpty();
        assertThat(taken.get(1).onlyCourse()).contains(1);
    }

    @Test
    void openingLeadsToItsWall() {
        assertThat(TakenFrom.of(line("lintels.count", "W1/D1"), WALLS)).extracting(TakenFrom::wall)
                .containsExactly("W1");
    }

    @Test
    void wallWithASlashInItsMarkIsNoCourse() {
        assertThat(TakenFrom.of(line("units.whole", "P/1"), WALLS)).extracting(TakenFrom::wall).containsExactly("P/1");
    }

    @Test
    void whatIsNoWallIsLeftOut() {
        assertThat(TakenFrom.of(line("beam.concrete", "grade beam G1", "mortar earth"), WALLS)).isEmpty();
    }

    @Test
    void linesThatCountPiecesSayOfWhichKind() {
        assertThat(TakenFrom.of(line("units.cutting", "W1"), WALLS).get(0).kind()).contains("cut");
        assertThat(TakenFrom.of(line("face.net", "W1"), WALLS).get(0).kind()).isEqualTo(Optional.empty());
    }

    private static TakeoffLine line(String formula, String... elements) {
        return new TakeoffLine("item", Quantity.of(BigDecimal.ONE, UnitCode.PIECE), formula, "", "geometry", List.of(),
                List.of(elements));
    }
}
