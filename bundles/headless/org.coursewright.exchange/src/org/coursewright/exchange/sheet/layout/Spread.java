package org.coursewright.exchange.sheet.layout;

import java.util.Optional;

/** Moves labels in a row apart so that none lies on another, each as near to its place as that allows. */
final class Spread {

    private Spread() {
    }

    /**
     * Places labels.
     *
     * @param wanted where they would lie best, rising
     * @param pitch least distance between two
     * @param low least place
     * @param high greatest place
     * @return where they lie, in the same order, or empty if there is no room for all
     */
    static Optional<double[]> of(double[] wanted, double pitch, double low, double high) {
        double room = high - low - (wanted.length - 1) * pitch;
        if (room < 0) {
            return Optional.empty();
        }
        double[] places = rising(wanted, pitch);
        for (int i = 0; i < places.length; i++) {
            places[i] = Math.min(Math.max(places[i], low), low + room) + i * pitch;
        }
        return Optional.of(places);
    }

    /** Least squares under the condition that places less the pitch never fall: neighbours that clash share their mean. */
    private static double[] rising(double[] wanted, double pitch) {
        double[] sums = new double[wanted.length];
        int[] counts = new int[wanted.length];
        int blocks = 0;
        for (int i = 0; i < wanted.length; i++) {
            sums[blocks] = wanted[i] - i * pitch;
            counts[blocks] = 1;
            blocks++;
            while (blocks > 1 && sums[blocks - 2] * counts[blocks - 1] > sums[blocks - 1] * counts[blocks - 2]) {
                blocks--;
                sums[blocks - 1] += sums[blocks];
                counts[blocks - 1] += counts[blocks];
            }
        }
        return filled(sums, counts, blocks, wanted.length);
    }

    private static double[] filled(double[] sums, int[] counts, int blocks, int length) {
        double[] places = new double[length];
        int at = 0;
        for (int block = 0; block < blocks; block++) {
            for (int i = 0; i < counts[block]; i++) {
                places[at++] = sums[block] / counts[block];
            }
        }
        return places;
    }
}
