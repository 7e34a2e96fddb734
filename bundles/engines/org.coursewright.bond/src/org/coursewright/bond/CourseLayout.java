package org.coursewright.bond;

import java.util.List;
import java.util.Objects;

/**
 * How one course is laid.
 *
 * @param course the course
 * @param runs from start to end; a run that cannot be filled is not among them
 */
public record CourseLayout(Course course, List<Run> runs) {

    public CourseLayout {
        Objects.requireNonNull(course, "course");
        runs = List.copyOf(runs);
    }
}
