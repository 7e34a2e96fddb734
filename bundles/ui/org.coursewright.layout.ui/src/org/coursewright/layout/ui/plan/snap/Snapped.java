package org.coursewright.layout.ui.plan.snap;

import java.util.List;

import org.coursewright.layout.ui.plan.shape.PlanPoint;

/**
 * A point, and what it has been drawn to.
 *
 * @param point where it is now
 * @param marks to be shown
 */
public record Snapped(PlanPoint point, List<SnapMark> marks) {

    public Snapped {
        marks = List.copyOf(marks);
    }

    /** @return whether it lies on another wall or at the end of one */
    public boolean meetsWall() {
        return marks.stream()
                .anyMatch(mark -> mark.kind() == SnapMark.Kind.END || mark.kind() == SnapMark.Kind.ON_WALL);
    }
}
