package org.coursewright.bond.internal.lap;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.ShortLap;
import org.coursewright.measure.Length;

/** Finds where joints of consecutive courses lap too little, from where the pieces lie; exact. */
public final class LapPlaces {

    private final Length least;
    private final List<ShortLap> found = new ArrayList<>();

    private LapPlaces(Length least) {
        this.least = least;
    }

    /**
     * @param least the least lap
     * @param courses from the bottom up
     * @return the short laps, straight joints left out, from the bottom up
     */
    public static List<ShortLap> of(Length least, List<CourseLayout> courses) {
        LapPlaces places = new LapPlaces(least);
        List<PlacedJoint> below = List.of();
        for (int course = 0; course < courses.size(); course++) {
            List<PlacedJoint> above = joints(courses.get(course));
            if (course > 0) {
                places.find(courses.get(course - 1), below, courses.get(course), above);
            }
            below = above;
        }
        return List.copyOf(places.found);
    }

    /** Goes along both courses at once, as their joints lie in order. */
    private void find(CourseLayout lower, List<PlacedJoint> below, CourseLayout upper, List<PlacedJoint> above) {
        int from = 0;
        for (PlacedJoint joint : below) {
            while (from < above.size() && joint.isClearOf(above.get(from), least)) {
                from++;
            }
            for (int i = from; i < above.size() && !above.get(i).isClearOf(joint, least); i++) {
                if (!joint.isStraightWith(above.get(i))) {
                    found.add(new ShortLap(lower.course().number(), upper.course().number(),
                            joint.middle(above.get(i)), joint.lap(above.get(i)), least));
                }
            }
        }
    }

    private static List<PlacedJoint> joints(CourseLayout layout) {
        List<PlacedJoint> joints = new ArrayList<>();
        layout.runs().forEach(run -> joints.addAll(PlacedJoint.of(run)));
        return joints;
    }
}
