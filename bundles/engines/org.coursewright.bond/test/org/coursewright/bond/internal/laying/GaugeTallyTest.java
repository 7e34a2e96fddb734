package org.coursewright.bond.internal.laying;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.Test;

/** Different joints of runs, by hand and against fractions in lowest terms. */
class GaugeTallyTest {

    private final GaugeTally tally = new GaugeTally();

    @Test
    void halfAnInchIsOneGaugeHoweverManyJointsShareIt() {
        tally.add(3, 6, 1);
        tally.add(4, 8, 2);

        assertThat(tally.size()).isEqualTo(1);
    }

    @Test
    void gaugeIsGoneWithItsLastRun() {
        tally.add(3, 6, 2);
        tally.add(3, 8, 1);
        tally.add(1, 2, -2);

        assertThat(tally.size()).isEqualTo(1);
        tally.add(3, 8, -1);
        assertThat(tally.size()).isZero();
    }

    @Test
    void gaugesAreToldApartAsFractions() {
        Random random = new Random(3);
        Map<List<Integer>, Integer> counts = new HashMap<>();
        for (int change = 0; change < 2_000; change++) {
            int total = random.nextInt(24);
            int joints = 1 + random.nextInt(12);
            int common = BigInteger.valueOf(total).gcd(BigInteger.valueOf(joints)).intValue();
            List<Integer> gauge = List.of(total / common, joints / common);
            int times = counts.getOrDefault(gauge, 0) > 0 && random.nextBoolean() ? -counts.get(gauge) : 1;
            tally.add(total, joints, times);
            counts.merge(gauge, times, Integer::sum);
            counts.values().removeIf(count -> count == 0);

            assertThat(tally.size()).isEqualTo(counts.size());
        }
    }
}
