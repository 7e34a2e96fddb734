package org.coursewright.bond.internal.filling;

import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunShape;

/**
 * Counts windows that are met however a run is filled, because no piece is long enough to bridge them. Between windows so
 * near one another that no joint finds room there must be one piece, or a joint that meets some of them. The two joints
 * at the sides of a tee, for instance, can be so far apart that the wall that passes it cannot lap both.
 */
final class Bridges {

    private final RunShape shape;
    private final Masonry masonry;

    Bridges(RunShape shape, Masonry masonry) {
        this.shape = shape;
        this.masonry = masonry;
    }

    /**
     * The windows that joints between pieces meet at least; proven.
     *
     * @param windows on whole positions from the start of the run
     */
    int leastMet(Windows.Grid windows) {
        int met = 0;
        int first = 0;
        for (int window = 1; window <= windows.lows().length; window++) {
            long end = windows.furthest()[window - 1];
            if (window == windows.lows().length || windows.lows()[window] - end >= masonry.least()) {
                met += leastMet(windows, windows.lows()[first], end);
                first = window;
            }
        }
        return met;
    }

    /** The windows that joints must meet between two positions, all of them near one another. */
    private int leastMet(Windows.Grid windows, long from, long to) {
        long begin = Math.max(from, shape.startJoints() * masonry.most());
        long end = Math.min(to, shape.length() - shape.endJoints() * masonry.most());
        long beyond = end - begin - masonry.whole();
        long apart = masonry.whole() + masonry.most();
        return beyond <= 0
                ? 0
                : Math.toIntExact((beyond + apart - 1) / apart) * leastOfOne(windows, begin - masonry.least(), end);
    }

    /** The windows that a joint meets at least that begins between two positions; fewest are met where one begins or ends. */
    private int leastOfOne(Windows.Grid windows, long after, long before) {
        int least = Math.min(met(windows, after + 1), met(windows, before - 1));
        for (int window = 0; window < windows.lows().length; window++) {
            for (long at : new long[]{windows.lows()[window] - masonry.least(), windows.highs()[window]}) {
                least = after < at && at < before ? Math.min(least, met(windows, at)) : least;
            }
        }
        return least;
    }

    /** How many windows the thinnest joint meets that begins there. */
    private int met(Windows.Grid windows, long at) {
        int met = 0;
        for (int window = 0; window < windows.lows().length; window++) {
            met += at < windows.highs()[window] && at + masonry.least() > windows.lows()[window] ? 1 : 0;
        }
        return met;
    }
}
