package org.coursewright.core.geometry;

import java.util.List;

/**
 * A point where walls end.
 *
 * @param at the point: the first end's own
 * @param ends the walls that end here, at least one, in the order they were given
 * @param passing the walls that pass, in the order they were given
 */
record Node(Point at, List<Arm> ends, List<Arm> passing) {

    boolean touches(Line line) {
        return ends.stream().anyMatch(arm -> arm.line().equals(line))
                || passing.stream().anyMatch(arm -> arm.line().equals(line));
    }
}
