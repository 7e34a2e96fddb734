package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.coursewright.bond.WallBuilder.mm;

import java.util.Random;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Odds of closing against a reference library and against laying runs at random. */
class ClosingOddsTest {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    @ParameterizedTest
    @CsvSource({"10, 1, 1.5, 0", "10, 20, 2, 0", "12, 20, 2, 0.3", "9, 60, 1.5, 1", "11.5, 7, 3, 0.05"})
    void oddsAreThoseOfTheNormalSum(double mean, int joints, double deviation, double likeness) {
        ClosingOdds odds = new ClosingOdds(new JointHabit(mean, deviation, likeness));
        double spread = deviation * Math.sqrt(joints * (1 + (joints - 1) * likeness));

        assertThat(odds.of(mm(10L * joints), joints))
                .isCloseTo(NORMAL.cumulativeProbability((10.0 * joints - joints * mean) / spread), within(1e-12));
    }

    @Test
    void ownDistributionAgreesWithTheReference() {
        for (double z = -8; z <= 8; z += 0.01) {
            double reference = NORMAL.cumulativeProbability(z);
            assertThat(org.coursewright.bond.internal.odds.NormalDistribution.cumulative(z)).isCloseTo(reference,
                    within(1e-12 * Math.max(reference, 1e-9) + 1e-15));
        }
        for (double probability : new double[]{1e-9, 0.001, 0.05, 0.5, 0.9, 0.95, 0.99, 0.999999}) {
            assertThat(org.coursewright.bond.internal.odds.NormalDistribution.quantile(probability))
                    .isCloseTo(NORMAL.inverseCumulativeProbability(probability), within(1e-7));
        }
    }

    /** A hundred thousand runs laid at random close as often as foretold, within four standard errors. */
    @ParameterizedTest
    @CsvSource({"10.5, 20, 2, 0", "10.5, 20, 2, 0.4", "9.8, 45, 1.5, 0.1", "10, 3, 2.5, 1"})
    void runsLaidAtRandomCloseAsOften(double mean, int joints, double deviation, double likeness) {
        Random random = new Random(3);
        int runs = 100_000;
        int closed = 0;
        for (int run = 0; run < runs; run++) {
            double habit = random.nextGaussian();
            double sum = 0;
            for (int joint = 0; joint < joints; joint++) {
                sum += mean + deviation
                        * (Math.sqrt(likeness) * habit + Math.sqrt(1 - likeness) * random.nextGaussian());
            }
            closed += sum <= 10.2 * joints ? 1 : 0;
        }
        double odds = new ClosingOdds(new JointHabit(mean, deviation, likeness))
                .of(Length.ofUnits(Math.round(10.2 * joints * Length.UNITS_PER_MILLIMETRE)), joints);

        assertThat((double) closed / runs).isCloseTo(odds, within(4 * Math.sqrt(odds * (1 - odds) / runs)));
    }

    @Test
    void reserveReachesTheOddsItIsChosenFor() {
        ClosingOdds odds = new ClosingOdds(new JointHabit(11, 2, 0.2));
        double reserve = odds.reserve(mm(10), 30, 0.95);
        Length total = mm(300).plus(Length.ofUnits(Math.round(reserve * Length.UNITS_PER_MILLIMETRE)));

        assertThat(odds.of(total, 30)).isCloseTo(0.95, within(1e-3));
        assertThat(reserve).isGreaterThan(30);
    }

    /** Independent joints: four times the joints, twice the spread. Alike: four times. */
    @Test
    void reserveGrowsWithTheRootOfTheJointsUnlessTheyShareAHabit() {
        ClosingOdds afresh = new ClosingOdds(new JointHabit(10, 2, 0));
        ClosingOdds alike = new ClosingOdds(new JointHabit(10, 2, 1));

        assertThat(afresh.reserve(mm(10), 40, 0.9)).isCloseTo(2 * afresh.reserve(mm(10), 10, 0.9), within(1e-9));
        assertThat(alike.reserve(mm(10), 40, 0.9)).isCloseTo(4 * alike.reserve(mm(10), 10, 0.9), within(1e-9));
    }

    @Test
    void withoutSpreadARunClosesOrDoesNot() {
        ClosingOdds exact = new ClosingOdds(new JointHabit(10, 0, 0));

        assertThat(exact.of(mm(100), 10)).isEqualTo(1);
        assertThat(exact.of(mm(99), 10)).isZero();
    }

    @Test
    void senselessHabitsAndOddsAreRefused() {
        assertThatThrownBy(() -> new JointHabit(0, 1, 0)).isInstanceOf(InvalidBondRequestException.class);
        assertThatThrownBy(() -> new JointHabit(10, -1, 0)).isInstanceOf(InvalidBondRequestException.class);
        assertThatThrownBy(() -> new JointHabit(10, 1, 1.1)).isInstanceOf(InvalidBondRequestException.class)
                .hasMessageContaining("1.1");
        assertThatThrownBy(() -> new ClosingOdds(new JointHabit(10, 1, 0)).reserve(mm(10), 3, 1))
                .isInstanceOf(InvalidBondRequestException.class).hasMessageContaining("1.0");
    }
}
