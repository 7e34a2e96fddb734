package org.coursewright.takeoff.nesting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import java.util.TreeMap;

import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.measure.Progress;
import org.coursewright.takeoff.TraceInput;
import org.junit.jupiter.api.Test;

class MakeOrCutTest {

    private static final SpecialOffer HALF = offer("1.50 USD", "0.60 USD", "1.00 USD", "60.00 USD");

    /** 100 halves out of 50 units: 75.00 and 60.00 for cuts, 1.35 each; made 1.00 each and 60.00: pays from 172. */
    @Test
    void breakEvenIsWhereTheSetUpIsEarned() {
        MakeOrCut few = MakeOrCut.compare(HALF, 100, 50);
        assertThat(few.cutting().rounded()).hasToString("135.00 USD");
        assertThat(few.making().rounded()).hasToString("160.00 USD");
        assertThat(few.makingPays()).isFalse();
        assertThat(few.breakEven()).hasValue(172);
        assertThat(MakeOrCut.compare(HALF, 172, 86).makingPays()).isTrue();
        assertThat(MakeOrCut.compare(HALF, 170, 85).makingPays()).isFalse();
    }

    @Test
    void specialThatCostsAsMuchAsCuttingNeverPays() {
        MakeOrCut never = MakeOrCut.compare(offer("1.50 USD", "0.60 USD", "1.35 USD", "1.00 USD"), 100, 50);
        assertThat(never.breakEven()).isEmpty();
        assertThat(never.makingPays()).isFalse();
    }

    /** Making 4 pieces of 65 mm saves nothing as long as they come out of the offcuts of 215 mm pieces. */
    @Test
    void piecesThatComeOutOfOffcutsSaveNoUnits() {
        TreeMap<Length, Long> cuts = new TreeMap<>();
        cuts.put(mm(215), 4L);
        cuts.put(mm(65), 4L);
        SpecialOffer quarter = new SpecialOffer(mm(65), usd("1.50 USD"), usd("0.60 USD"), usd("1.00 USD"), usd(
                "60.00 USD"));
        MakeOrCut compared = MakeOrCut.compare(new CutStock(mm(290), mm(4), false), cuts, quarter, new CutPlanner(),
                Progress.NONE);
        assertThat(compared.unitsSaved()).isZero();
        assertThat(compared.cutting().rounded()).hasToString("2.40 USD");
        assertThat(compared.breakEven()).isEmpty();
    }

    /** For even numbers of halves, which save half a unit each, the decision turns exactly at the break-even. */
    @Test
    void decisionTurnsAtTheBreakEven() {
        Random random = new Random(2);
        for (int i = 0; i < 200; i++) {
            SpecialOffer offer = offer(price(random), price(random), price(random), price(random));
            long pieces = 2 * (1 + random.nextInt(100));
            MakeOrCut compared = MakeOrCut.compare(offer, pieces, pieces / 2);
            boolean reached = compared.breakEven().isPresent() && pieces >= compared.breakEven().getAsLong();
            assertThat(compared.making().minus(compared.cutting()).amount().signum() <= 0 && compared.breakEven()
                    .isPresent()).isEqualTo(reached);
        }
    }

    @Test
    void breakEvenShowsItsInputs() {
        assertThat(MakeOrCut.compare(HALF, 100, 50).trace().inputs()).extracting(TraceInput::symbol).containsExactly(
                "setUp", "unitsSaved", "unit", "pieces", "cut", "special");
    }

    @Test
    void pricesInTwoCurrenciesAreRefusedNamingTheSpecial() {
        assertThatThrownBy(() -> offer("1.50 USD", "0.60 EUR", "1.00 USD", "60.00 USD")).hasMessageContaining("140 mm")
                .hasMessageContaining("0.60 EUR");
    }

    @Test
    void negativePriceIsRefused() {
        assertThatThrownBy(() -> offer("1.50 USD", "0.60 USD", "-1.00 USD", "60.00 USD")).hasMessageContaining(
                "-1.00 USD");
    }

    private static String price(Random random) {
        return "%d.%02d USD".formatted(random.nextInt(4), random.nextInt(100));
    }

    private static SpecialOffer offer(String unit, String cut, String special, String setUp) {
        return new SpecialOffer(mm(140), usd(unit), usd(cut), usd(special), usd(setUp));
    }

    private static Money usd(String stored) {
        return Money.fromStored(stored);
    }

    private static Length mm(long millimetres) {
        return Length.ofMillimetres(millimetres);
    }
}
