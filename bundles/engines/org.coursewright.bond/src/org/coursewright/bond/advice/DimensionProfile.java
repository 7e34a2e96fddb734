package org.coursewright.bond.advice;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A wall's cuts as a function of one dimension, all else as planned.
 *
 * @param adjustable the dimension
 * @param planned its value in the plan
 * @param points by ascending change; values that are not possible, such as an opening over another, are left out
 * @param best the change with the fewest unfilled runs, short laps and cuts among those laid or fitted, the nearest of these
 */
public record DimensionProfile(Adjustable adjustable, Length planned, List<ProfilePoint> points, Length best) {

    public DimensionProfile {
        Objects.requireNonNull(adjustable, "adjustable");
        Objects.requireNonNull(planned, "planned");
        points = List.copyOf(points);
        Objects.requireNonNull(best, "best");
    }
}
