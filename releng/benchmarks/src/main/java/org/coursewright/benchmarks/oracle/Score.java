package org.coursewright.benchmarks.oracle;

import java.util.Comparator;
import java.util.List;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;

/**
 * What a layout is judged by, first things first: less is better.
 *
 * @param unfillable runs left empty
 * @param lapViolations pairs of joints that lap too little, straight joints left out
 * @param cuts pieces that have to be cut
 */
public record Score(int unfillable, int lapViolations, int cuts) implements Comparable<Score> {

    /** Nothing unfilled, no lap short, no cut. */
    public static final Score NONE = new Score(0, 0, 0);

    private static final Comparator<Score> ORDER = Comparator.comparingInt(Score::unfillable)
            .thenComparingInt(Score::lapViolations).thenComparingInt(Score::cuts);

    /** @return the score of a layout, recomputed from its pieces */
    public static Score of(WallFace wall, Handing handing, WallLayout layout) {
        LaidWall laid = LaidWall.of(layout);
        int straight = straightJoints(wall, handing, layout);
        return new Score(laid.unfillable(), laid.shortLaps(wall.rule().leastLap().units()) - straight, laid.cuts());
    }

    /** @return joints over joints that are so by design, which no layout can lap */
    public static int straightJoints(WallFace wall, Handing handing, WallLayout layout) {
        return StraightJoints.count(laidStretches(wall, handing, layout));
    }

    private static List<Stretch> laidStretches(WallFace wall, Handing handing, WallLayout layout) {
        return Stretches.of(wall, handing).stream().filter(stretch -> isLaid(layout, stretch)).toList();
    }

    private static boolean isLaid(WallLayout layout, Stretch stretch) {
        CourseLayout course = layout.courses().get(stretch.course());
        return course.runs().stream().anyMatch(run -> run.from().units() == stretch.from());
    }

    /** @return the score of this and {@code other} together */
    public Score plus(Score other) {
        return new Score(unfillable + other.unfillable, lapViolations + other.lapViolations, cuts + other.cuts);
    }

    @Override
    public int compareTo(Score other) {
        return ORDER.compare(this, other);
    }
}
