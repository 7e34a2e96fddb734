package org.coursewright.layout.ui.strip;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.trial.PlaceCuts;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.geometry.Rectangle;

/** Where the places of an opening are on the strip. */
final class StripScale {

    private static final int GAP = 2;

    private final PlaceCuts cuts;
    private final Rectangle area;
    /** Half of what lies between two places. */
    private final Length half;
    private final Length first;
    private final Length last;
    private final int mostCuts;

    /**
     * @param cuts by place, at least one point
     * @param area pixels for the bars
     */
    StripScale(PlaceCuts cuts, Rectangle area) {
        this.cuts = cuts;
        this.area = area;
        List<ProfilePoint> points = cuts.points();
        this.half = Length.ofUnits(Math.max(1, leastStep(points).units() / 2));
        this.first = points.get(0).change().minus(half);
        this.last = points.get(points.size() - 1).change().plus(half);
        this.mostCuts = Math.max(1, cuts.mostCuts());
    }

    private static Length leastStep(List<ProfilePoint> points) {
        Optional<Length> least = Optional.empty();
        for (int i = 1; i < points.size(); i++) {
            Length step = points.get(i).change().minus(points.get(i - 1).change());
            least = least.filter(step::isGreaterThan).or(() -> Optional.of(step));
        }
        return least.orElse(Length.ofInchFraction(1, 4));
    }

    PlaceCuts cuts() {
        return cuts;
    }

    Rectangle area() {
        return area;
    }

    /** @return the box of a point's column, as high as the area */
    Rectangle column(ProfilePoint point) {
        int left = x(point.change().minus(half));
        int right = x(point.change().plus(half));
        int gap = right - left > 3 * GAP ? GAP : 0;
        return new Rectangle(left, area.y, Math.max(1, right - left - gap), area.height);
    }

    /** @return how high a number of cuts is; none is a line of one pixel */
    int height(int number) {
        return 1 + (area.height - 1) * number / mostCuts;
    }

    /** @return whether a place of the opening lies between the ends of the strip */
    boolean contains(OpeningPlace place) {
        Length change = change(place);
        return !change.isLessThan(first) && !change.isGreaterThan(last);
    }

    /** @return pixels to the right of a place of the opening */
    int x(OpeningPlace place) {
        return x(change(place));
    }

    private Length change(OpeningPlace place) {
        return cuts.grip().between(cuts.planned(), place);
    }

    private int x(Length change) {
        return area.x + (int) Math.round(
                (double) area.width * change.minus(first).units() / last.minus(first).units());
    }

    /** @return the point whose column is there, empty beside the columns */
    Optional<ProfilePoint> at(int x) {
        return cuts.points().stream().filter(point -> column(point).x <= x && x <= column(point).right()).findFirst();
    }
}
