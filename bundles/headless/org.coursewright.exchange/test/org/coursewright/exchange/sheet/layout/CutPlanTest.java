package org.coursewright.exchange.sheet.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.TreeMap;

import org.coursewright.bond.PieceStock;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

class CutPlanTest {

    private static final Length KERF = Length.ofInchFraction(1, 4);
    private static final PieceStock STOCK = new PieceStock(Length.ofInches(14), List.of(), Length.ofInches(3), KERF,
            KERF);

    @Test
    void twoPiecesShareAUnitOnlyIfTheKerfFitsBetween() {
        // 7 + 7 leaves nothing for the saw; 7 + 1/4 + 6 3/4 is 14 exactly
        assertThat(plan(inches(7, 1), 2)).containsExactly(new CutPlan.Line(2, List.of(inches(7, 1)), inches(27, 4)));
        TreeMap<Length, Long> pieces = new TreeMap<>();
        pieces.put(inches(7, 1), 1L);
        pieces.put(inches(27, 4), 1L);
        assertThat(CutPlan.of(pieces, STOCK))
                .containsExactly(new CutPlan.Line(1, List.of(inches(7, 1), inches(27, 4)), Length.ZERO));
    }

    @Test
    void unitsCutAlikeShareALine() {
        assertThat(plan(Length.ofInches(4), 7)).containsExactly(
                new CutPlan.Line(2, List.of(inches(4, 1), inches(4, 1), inches(4, 1)), inches(5, 4)),
                new CutPlan.Line(1, List.of(inches(4, 1)), inches(39, 4)));
    }

    @Test
    void everyPieceIsCutOnceAndNoUnitIsOverfull() {
        Random random = new Random(11);
        for (int trial = 0; trial < 100; trial++) {
            TreeMap<Length, Long> pieces = new TreeMap<>();
            for (int i = 0; i < 6; i++) {
                pieces.merge(inches(12 + random.nextInt(45), 4), 1L + random.nextInt(9), Long::sum);
            }
            TreeMap<Length, Long> cut = new TreeMap<>();
            for (CutPlan.Line line : CutPlan.of(pieces, STOCK)) {
                line.pieces().forEach(piece -> cut.merge(piece, line.units(), Long::sum));
                Length used = line.pieces().stream().reduce(Length.ZERO, Length::plus)
                        .plus(KERF.times(line.pieces().size() - 1L));
                assertThat(used).isLessThanOrEqualTo(STOCK.whole());
            }
            assertThat(cut).isEqualTo(pieces);
        }
    }

    private static List<CutPlan.Line> plan(Length piece, long count) {
        TreeMap<Length, Long> pieces = new TreeMap<>();
        pieces.put(piece, count);
        return CutPlan.of(pieces, STOCK);
    }

    private static Length inches(int numerator, int denominator) {
        return Length.ofInchFraction(numerator, denominator);
    }
}
