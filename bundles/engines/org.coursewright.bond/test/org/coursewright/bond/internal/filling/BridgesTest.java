package org.coursewright.bond.internal.filling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;

import java.util.Random;

import org.coursewright.bond.RunEnd;
import org.coursewright.bond.internal.choice.WorkLimit;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunPins;
import org.coursewright.bond.internal.run.RunShape;
import org.junit.jupiter.api.Test;

/** Windows that no filling keeps clear of, by hand and held against fillings. */
class BridgesTest {

    /** Joints of at least 3/8 in that end at the near side of a tee and begin at its far side. */
    private static Windows beside(String near, String far, String lap, int courses) {
        Windows windows = new Windows();
        long length = in("100").units();
        for (int course = 0; course < courses; course++) {
            windows.add(in(near).units() - in("3/8").units(), in(near).units(), in(lap).units(), length);
            windows.add(in(far).units(), in(far).units() + in("3/8").units(), in(lap).units(), length);
        }
        return windows;
    }

    private static int leastMet(Windows windows, String lap) {
        RunShape shape = new RunShape(in("100").units(), RunEnd.FACE, RunEnd.FACE, 0, 0, RunPins.NONE);
        Masonry masonry = Masonry.of(stock("14"), rule(lap, "3/8", "1/2", "3/4"));
        return new Bridges(shape, masonry).leastMet(windows.grid(1));
    }

    /** From 36 1/8 in to 43 1/2 in and from 46 1/2 in on: a joint finds room between. */
    @Test
    void jointBetweenWindowsMeetsNone() {
        assertThat(leastMet(beside("40", "50", "3 1/2", 1), "3 1/2")).isZero();
    }

    /** From 36 1/8 in to 47 7/8 in: a unit of 14 in covers that. */
    @Test
    void pieceBridgesWindowsNearOneAnother() {
        assertThat(leastMet(beside("40", "44", "3 1/2", 1), "3 1/2")).isZero();
    }

    /** From 32 5/8 in to 57 3/8 in without room between: 24 3/4 in, more than a unit. */
    @Test
    void jointThatMustLieInWindowsMeetsOne() {
        assertThat(leastMet(beside("40", "50", "7", 1), "7")).isEqualTo(1);
    }

    @Test
    void jointBetweenCoursesAlikeMeetsAWindowOfEach() {
        assertThat(leastMet(beside("40", "50", "7", 2), "7")).isEqualTo(2);
    }

    @Test
    void noFillingMeetsFewer() {
        Random random = new Random(31);
        Masonry masonry = Masonry.of(stock("14", "6 3/4"), rule("7", "3/8", "1/2", "3/4"));
        int met = 0;
        for (int round = 0; round < 200; round++) {
            long length = in("60").units() + random.nextInt(120) * masonry.cutStep();
            RunShape shape = new RunShape(length, random.nextBoolean() ? RunEnd.FACE : RunEnd.JOINT, RunEnd.FACE, 0, 0,
                    RunPins.NONE);
            Windows windows = new Windows();
            for (int window = 0; window < 4; window++) {
                long start = random.nextLong(length);
                windows.add(start, start + masonry.least(), masonry.lap(), length);
            }
            int least = new Bridges(shape, masonry).leastMet(windows.grid(1));
            RunFiller filler = new RunFiller(shape, new Shortfalls(masonry), new WorkLimit());
            for (int cuts = 0; cuts < 4; cuts++) {
                for (Pattern pattern : filler.some(cuts, 20, 400)) {
                    assertThat(met(windows.grid(pattern.joints()), pattern, shape)).isGreaterThanOrEqualTo(least);
                }
            }
            met += least;
        }
        assertThat(met).isGreaterThan(50);
    }

    private static int met(Windows.Grid windows, Pattern pattern, RunShape shape) {
        int met = 0;
        for (int joint = shape.startJoints(); joint < pattern.joints() - shape.endJoints(); joint++) {
            for (int window = 0; window < windows.lows().length; window++) {
                boolean clear = pattern.jointStart(joint) >= windows.highs()[window]
                        || pattern.jointStart(joint) + pattern.jointTotal() <= windows.lows()[window];
                met += clear ? 0 : 1;
            }
        }
        return met;
    }
}
