package org.coursewright.takeoff.range.internal;

/**
 * Standard normal random numbers, by the polar method (G. Marsaglia and T. A. Bray, "A convenient method for generating
 * normal variables", SIAM Review 6, 1964). Not for use by several threads at once.
 */
public final class NormalStream {

    private final SplitMix random;
    private double spare;
    private boolean hasSpare;

    /**
     * @param seed of all streams
     * @param number of this one; streams with different numbers are independent
     */
    public NormalStream(long seed, long number) {
        random = SplitMix.stream(seed, number);
    }

    /** @return the next number */
    public double next() {
        if (hasSpare) {
            hasSpare = false;
            return spare;
        }
        double x;
        double y;
        double square;
        do {
            x = 2 * random.nextShare() - 1;
            y = 2 * random.nextShare() - 1;
            square = x * x + y * y;
        } while (square >= 1 || square == 0);
        double scale = Math.sqrt(-2 * StrictMath.log(square) / square);
        spare = y * scale;
        hasSpare = true;
        return x * scale;
    }
}
