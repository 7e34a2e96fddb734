package org.coursewright.core.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;

import org.coursewright.core.fit.Saving;
import org.coursewright.core.fit.UnitsTaken;
import org.coursewright.measure.Money;
import org.junit.jupiter.api.Test;

class SavingWordsTest {

    private static Saving saving(int laps, long cuts, long blocks, Optional<BigDecimal> minutes,
            Optional<Money> cost) {
        return new Saving(laps, new UnitsTaken(0, blocks, 0, 0, cuts), minutes, cost);
    }

    private static String words(int laps, int cuts, long blocks) {
        return new SavingWords(saving(laps, cuts, blocks, Optional.empty(), Optional.empty())).text();
    }

    @Test
    void whatIsSparedIsToldBeforeWhatIsTakenMore() {
        assertThat(words(0, 14, -3)).isEqualTo("Spares 14 cut pieces; takes 3 blocks more.");
    }

    @Test
    void oneIsNotSeveralAndWhatStaysTheSameIsLeftOut() {
        assertThat(words(1, 0, 0)).isEqualTo("Spares 1 short lap.");
    }

    @Test
    void minutesAndCostAreToldIfTheyAreKnown() {
        Saving saving = saving(0, 6, 0, Optional.of(new BigDecimal("124.3529")),
                Optional.of(new Money(new BigDecimal("12.4996"), Currency.getInstance("USD"))));

        assertThat(new SavingWords(saving).text())
                .isEqualTo("Spares 6 cut pieces, 124 min, 12.50 USD before mark-ups.");
    }
}
