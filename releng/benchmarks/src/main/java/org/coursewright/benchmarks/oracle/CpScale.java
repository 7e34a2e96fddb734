package org.coursewright.benchmarks.oracle;

import java.util.Collection;
import java.util.TreeSet;
import java.util.stream.LongStream;

import org.coursewright.bond.WallFace;

/**
 * The lengths of a wall divided by what divides them all, to keep the solver's numbers small.
 *
 * @param grid the common divisor (1/320 mm)
 * @param uncut lengths of whole units and specials (grid)
 * @param all lengths of all pieces (grid)
 * @param least narrowest joint (grid)
 * @param most widest joint (grid)
 */
record CpScale(long grid, long[] uncut, long[] all, long least, long most) {

    static CpScale of(WallFace wall, Collection<Stretch> stretches) {
        PieceLengths lengths = PieceLengths.of(wall.stock());
        long least = wall.rule().least().units();
        long most = wall.rule().most().units();
        long grid = gcd(gcd(least, most), wall.rule().leastLap().units());
        for (long length : lengths.all()) {
            grid = gcd(grid, length);
        }
        for (Stretch stretch : stretches) {
            grid = LongStream.of(grid, stretch.from(), stretch.to(), finite(stretch.clearFrom()),
                    finite(stretch.clearTo())).reduce(0, CpScale::gcd);
        }
        return new CpScale(grid, divided(lengths.uncut(), grid), divided(lengths.all(), grid), least / grid,
                most / grid);
    }

    private static long finite(long position) {
        return position == Long.MIN_VALUE || position == Long.MAX_VALUE ? 0 : position;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? Math.abs(a) : gcd(b, a % b);
    }

    private static long[] divided(TreeSet<Long> lengths, long grid) {
        return lengths.stream().mapToLong(length -> length / grid).toArray();
    }

    long inGrid(long units) {
        return units / grid;
    }

    long shortest() {
        return all[0];
    }

    long longest() {
        return all[all.length - 1];
    }
}
