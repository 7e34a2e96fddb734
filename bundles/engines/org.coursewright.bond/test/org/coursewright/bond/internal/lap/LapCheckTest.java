package org.coursewright.bond.internal.lap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.coursewright.bond.Piece;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.run.RunPins;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

/** Short laps between patterns, counted against every pair of joints compared as exact fractions. */
class LapCheckTest {

    private static final long UNIT = in("1/16").units();
    private static final RunShape JOINT_AT_BOTH_ENDS = shape(RunEnd.JOINT, RunEnd.JOINT);
    private static final RunShape JOINT_AT_START = shape(RunEnd.JOINT, RunEnd.FACE);

    private static RunShape shape(RunEnd start, RunEnd end) {
        return new RunShape(in("29 1/4").units(), start, end, 0, 0, RunPins.NONE);
    }

    private static long exact(Pattern first, Pattern second, long offset, long lap) {
        long m = first.joints();
        long n = second.joints();
        long count = 0;
        for (int joint = 0; joint < m; joint++) {
            for (int other = 0; other < n; other++) {
                long start = first.jointStart(joint) * n;
                long otherStart = (second.jointStart(other) + offset * n) * m;
                long between = Math.max(otherStart - start - first.jointTotal() * n,
                        start - otherStart - second.jointTotal() * m);
                count += between < lap * m * n ? 1 : 0;
            }
        }
        return count;
    }

    private static Pattern pattern(WallFace wall, Random random) {
        RunShape shape = new RunFinder(wall, new Handing(List.of(), Map.of())).find().get(0).get(0).shape();
        long[] pieces = new long[2 + random.nextInt(6)];
        Arrays.setAll(pieces, piece -> UNIT * (48 + 16 * random.nextInt(12)));
        Piece.Kind[] kinds = new Piece.Kind[pieces.length];
        Arrays.fill(kinds, Piece.Kind.CUT);
        return new Pattern(shape, Masonry.of(wall.stock(), wall.rule()), pieces, kinds,
                UNIT * 8 * (pieces.length - 1) + random.nextInt(3) - 1);
    }

    @Test
    void everyPairThatLapsTooLittleIsCounted() {
        WallFace wall = wall("100").stocked(stock("14")).ruled(rule("3 1/2", "3/8", "1/2", "3/4")).courses(1).build();
        Random random = new Random(5);
        int touching = 0;
        for (int round = 0; round < 5_000; round++) {
            Pattern first = pattern(wall, random);
            Pattern second = pattern(wall, random);
            long offset = UNIT * 8 * (random.nextInt(9) - 4);
            long lap = UNIT * 16 * (2 + random.nextInt(2));
            long expected = exact(first, second, offset, lap);

            assertThat(LapCheck.violations(first, second, offset, lap)).isEqualTo((int) expected);
            assertThat(LapCheck.violations(first, second, offset, lap, 2)).isEqualTo((int) Math.min(2, expected));
            LapCheck.Apart apart = LapCheck.apart(JOINT_AT_BOTH_ENDS, first, JOINT_AT_START, second, offset, lap);
            assertThat(apart.ends() + apart.first() + apart.second() + apart.between()).isEqualTo((int) expected);
            touching += exact(first, second, offset, lap + 1) != expected ? 1 : 0;
        }
        assertThat(touching).as("pairs that lap by exactly the least").isPositive();
    }

    /** Two runs of two pieces between joints; the upper lies so far along that only its first joint is near the lower's last. */
    @Test
    void shortLapsAreToldApartByTheJointsTheyAreBetween() {
        assertThat(apart(in("28 3/4"))).isEqualTo(new LapCheck.Apart(1, 0, 0, 0));
        assertThat(apart(in("14 1/4"))).isEqualTo(new LapCheck.Apart(0, 1, 1, 0));
        assertThat(apart(in("0"))).isEqualTo(new LapCheck.Apart(2, 0, 0, 1));
    }

    private static LapCheck.Apart apart(Length offset) {
        WallFace wall = wall("29 1/4").stocked(stock("14")).ruled(rule("3 1/2", "3/8", "1/2", "3/4")).courses(1)
                .build();
        long whole = in("14").units();
        Pattern pattern = new Pattern(JOINT_AT_BOTH_ENDS, Masonry.of(wall.stock(), wall.rule()),
                new long[]{whole, whole}, new Piece.Kind[]{Piece.Kind.WHOLE, Piece.Kind.WHOLE}, in("1 1/4").units());
        return LapCheck.apart(JOINT_AT_BOTH_ENDS, pattern, JOINT_AT_BOTH_ENDS, pattern, offset.units(),
                in("3 1/2").units());
    }
}
