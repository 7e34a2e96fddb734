package org.coursewright.layout.ui.plan.shape;

import java.util.List;

import org.coursewright.core.geometry.Place;
import org.coursewright.core.geometry.WallMeeting;
import org.coursewright.model.building.Wall;

/**
 * A point at which walls meet, or at which one ends in the open.
 *
 * @param kind how they meet
 * @param at the point
 * @param ends what meets there
 */
public record PlanMeeting(WallMeeting.Kind kind, PlanPoint at, List<End> ends) {

    /**
     * A wall and where on it the meeting is.
     *
     * @param wall of the storey
     * @param place which end, or between them
     */
    public record End(Wall wall, Place place) {

        /** @return whether it is the start or the end of the wall */
        public boolean isEnd() {
            return place != Place.ALONG;
        }
    }

    public PlanMeeting {
        ends = List.copyOf(ends);
    }
}
