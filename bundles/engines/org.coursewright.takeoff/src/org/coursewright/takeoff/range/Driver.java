package org.coursewright.takeoff.range;

/**
 * What one line or source does to the total: a bar of the tornado.
 *
 * @param name the line's id or the source
 * @param low expected total if it is at its 10th percentile and all else at its mean
 * @param high expected total if it is at its 90th percentile and all else at its mean
 * @param contribution its share of the variance of the total; the shares of all lines add up to 1, or are all 0 if nothing
 *        varies
 */
public record Driver(String name, double low, double high, double contribution) {

    /** @return length of the bar, zero or more */
    public double swing() {
        return high - low;
    }
}
