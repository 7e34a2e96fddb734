package org.coursewright.bond;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * Why pieces of one run are cut.
 *
 * @param course number of its course
 * @param from where the run begins along the wall
 * @param to where it ends along the wall
 * @param start what it begins at
 * @param end what it ends at
 * @param causes at least one; their cuts add up to the cut pieces of the run
 */
public record CutReason(int course, Length from, Length to, RunBound start, RunBound end, List<CutCause> causes) {

    public CutReason {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
        causes = List.copyOf(causes);
    }

    /** @return cut pieces of the run */
    public int cuts() {
        return causes.stream().mapToInt(CutCause::cuts).sum();
    }

    /** @return {@code to - from} */
    public Length length() {
        return to.minus(from);
    }
}
