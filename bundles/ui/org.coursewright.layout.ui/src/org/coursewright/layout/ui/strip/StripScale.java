package org.coursewright.layout.ui.strip;

import java.util.Optional;

import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.layout.ui.trial.PlaceCuts;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Where the places of an opening are on the strip.
 *
 * @param cuts by place, at least one point
 * @param area pixels for the bars
 */
record StripScale(PlaceCuts cuts, Rectangle area) {

    private static final int GAP = 2;

    /** @return the box of a point's column, as high as the area */
    Rectangle column(ProfilePoint point) {
        int left = x(point.change().minus(half()));
        int right = x(point.change().plus(half()));
        int gap = right - left > 3 * GAP ? GAP : 0;
        return new Rectangle(left, area.y, Math.max(1, right - left - gap), area.height);
    }

    /** @return how high a number of cuts is; none is a line of one pixel */
    int height(int number) {
        return 1 + (area.height - 1) * number / Math.max(1, cuts.mostCuts());
    }

    /** @return pixels to the right of a change from the planned place */
    int x(Length change) {
        return area.x + (int) Math.round((double) area.width * change.minus(first()).units() / span().units());
    }

    /** @return the point whose column is there, empty beside the columns */
    Optional<ProfilePoint> at(int x) {
        return cuts.points().stream().filter(point -> column(point).x <= x && x <= column(point).right()).findFirst();
    }

    private Length first() {
        return cuts.points().get(0).change().minus(half());
    }

    private Length span() {
        return cuts.points().get(cuts.points().size() - 1).change().plus(half()).minus(first());
    }

    private Length half() {
        Length step = cuts.points().size() < 2
                ? Length.ofInchFraction(1, 4)
                : cuts.points().get(1).change().minus(cuts.points().get(0).change());
        for (int i = 2; i < cuts.points().size(); i++) {
            Length next = cuts.points().get(i).change().minus(cuts.points().get(i - 1).change());
            step = next.isLessThan(step) ? next : step;
        }
        return Length.ofUnits(Math.max(1, step.units() / 2));
    }
}
