package org.coursewright.layout.ui.face;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;

/**
 * Where joints of two consecutive courses lap less than they must.
 *
 * @param lower number of the lower course
 * @param at where along the wall, in the middle between the two joints
 */
public record ShortLap(int lower, Length at) {

    static List<ShortLap> in(WallFace face, WallLayout layout) {
        List<ShortLap> found = new ArrayList<>();
        for (int i = 1; i < layout.courses().size(); i++) {
            CourseLayout lower = layout.courses().get(i - 1);
            find(lower.course().number(), joints(lower), joints(layout.courses().get(i)), face.rule().leastLap(),
                    found);
        }
        return List.copyOf(found);
    }

    /** Goes along both courses at once, as their joints lie in order. */
    private static void find(int course, List<PlacedJoint> lower, List<PlacedJoint> upper, Length least,
            List<ShortLap> found) {
        int from = 0;
        for (PlacedJoint joint : lower) {
            while (from < upper.size() && joint.isClearOf(least, upper.get(from))) {
                from++;
            }
            for (int i = from; i < upper.size() && !upper.get(i).isClearOf(least, joint); i++) {
                if (!joint.isStraightWith(upper.get(i))) {
                    found.add(new ShortLap(course, joint.middle(upper.get(i))));
                }
            }
        }
    }

    private static List<PlacedJoint> joints(CourseLayout layout) {
        return layout.runs().stream().map(run -> new PlacedRun(layout.course().number(), run))
                .flatMap(run -> run.joints().stream()).toList();
    }
}
