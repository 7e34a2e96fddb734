package org.coursewright.bond;

import java.util.List;
import java.util.Objects;

import org.coursewright.bond.internal.lap.LapPlaces;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/**
 * Where two joints of consecutive courses lap less than they must.
 *
 * @param lower number of the lower course
 * @param upper number of the upper course
 * @param at where along the wall, in the middle between the two joints, to the nearest 1/320 mm
 * @param lap what is there between the edges of the two joints, exactly; less than zero where they overlap
 * @param least what the rule asks for
 */
public record ShortLap(int lower, int upper, Length at, LengthRatio lap, Length least) {

    public ShortLap {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(lap, "lap");
        Objects.requireNonNull(least, "least");
    }

    /**
     * Finds the short laps of a layout. Straight joints, which nobody can lap, are not among them.
     *
     * @param wall what was asked, not null
     * @param courses how it is laid, from the bottom up, not null
     * @return from the bottom up, in a course from start to end
     */
    public static List<ShortLap> in(WallFace wall, List<CourseLayout> courses) {
        return LapPlaces.of(wall.rule().leastLap(), courses);
    }
}
