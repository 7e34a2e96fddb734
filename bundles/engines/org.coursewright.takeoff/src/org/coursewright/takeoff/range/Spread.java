package org.coursewright.takeoff.range;

import java.util.function.DoubleUnaryOperator;

/** What values an uncertain amount may take. */
public sealed interface Spread permits Certain, Triangular, Pert {

    /** @return the expected value */
    double mean();

    /** @return the expected squared distance from the mean */
    double variance();

    /**
     * Turns a standard normal value into a value of this spread that is exceeded with the same probability. So normal values
     * that are correlated become correlated amounts (a Gaussian copula), and percentiles of the normal become percentiles of
     * the amount. May take a millisecond to prepare; what it returns is fast.
     *
     * @return a function that never falls
     */
    DoubleUnaryOperator fromNormal();

    /**
     * @param factor zero or more
     * @return this spread with all values multiplied
     */
    Spread times(double factor);
}
