package org.coursewright.takeoff.range;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Arrays;
import java.util.List;

/** What a simulation tells about the total, in the currency of its lines. */
public final class CostRange {

    private final double mean;
    private final double standardDeviation;
    private final double[] sorted;
    private final List<Driver> lines;
    private final List<Driver> sources;

    CostRange(double[] totals, List<Driver> lines, List<Driver> sources) {
        sorted = totals.clone();
        Arrays.sort(sorted);
        mean = Arrays.stream(sorted).sum() / sorted.length;
        double squares = Arrays.stream(sorted).map(total -> (total - mean) * (total - mean)).sum();
        standardDeviation = Math.sqrt(squares / (sorted.length - 1));
        this.lines = List.copyOf(lines);
        this.sources = List.copyOf(sources);
    }

    /** @return mean of all draws */
    public double mean() {
        return mean;
    }

    /** @return standard deviation of all draws, with one degree of freedom less than there are draws */
    public double standardDeviation() {
        return standardDeviation;
    }

    /**
     * The total that is not exceeded in a share of the draws, interpolated between neighbours (definition 7 of R. J. Hyndman
     * and Y. Fan, "Sample quantiles in statistical packages", American Statistician 50, 1996).
     *
     * @param share from 0 to 1, such as 0.8 for P80
     * @return that total
     */
    public double percentile(double share) {
        require(share >= 0 && share <= 1, "A percentile of %s is asked for: give a share from 0 to 1.", share);
        double position = share * (sorted.length - 1);
        int below = (int) position;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (position - below) * (sorted[above] - sorted[below]);
    }

    /**
     * @param total any amount
     * @return the share of draws that do not exceed it: the odds of keeping to it
     */
    public double oddsOf(double total) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] <= total) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return (double) low / sorted.length;
    }

    /** @return what each line does to the total, the widest swing first */
    public List<Driver> lines() {
        return lines;
    }

    /** @return what each source does to the total, all its lines moving together, the widest swing first */
    public List<Driver> sources() {
        return sources;
    }
}
