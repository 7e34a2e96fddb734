package org.coursewright.layout.ui.plan.dimension;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanMeeting;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;

/**
 * One of the two long faces of a wall, and where other walls run into it.
 *
 * @param wall whose face it is
 * @param left whether it is on the left hand as one looks from its start to its end
 */
record WallSide(WallShape wall, boolean left) {

    /** A stretch of the face between other walls, as offsets from the outer start face; {@code far} stands at its end. */
    record Stretch(Length from, Length to, Optional<Wall> far) {
    }

    Heading away() {
        Heading toLeft = wall.heading().left();
        return left ? toLeft : toLeft.reversed();
    }

    PlanPoint at(Length offset) {
        Length half = wall.module().half();
        return wall.at(offset, left ? half : half.negated());
    }

    private Length begin() {
        return wall.offset(wall.outline().get(left ? 0 : 3));
    }

    private Length end() {
        return wall.offset(wall.outline().get(left ? 1 : 2));
    }

    /** The stretches of the face, from the start on. */
    List<Stretch> stretches(StoreyShape storey) {
        List<Stretch> found = new ArrayList<>();
        Length begin = begin();
        for (Stem stem : stems(storey)) {
            if (stem.from().isGreaterThan(begin)) {
                found.add(new Stretch(begin, stem.from(), Optional.of(stem.wall())));
            }
            begin = stem.to().isGreaterThan(begin) ? stem.to() : begin;
        }
        if (end().isGreaterThan(begin)) {
            found.add(new Stretch(begin, end(), Optional.empty()));
        }
        return found;
    }

    /** Whether no other wall runs into the face. */
    boolean isPlain(StoreyShape storey) {
        return stems(storey).isEmpty();
    }

    private record Stem(Wall wall, Length from, Length to) {
    }

    private List<Stem> stems(StoreyShape storey) {
        List<Stem> stems = new ArrayList<>();
        for (PlanMeeting meeting : storey.meetings()) {
            if (meeting.ends().stream().anyMatch(end -> end.wall() == wall.wall() && !end.isEnd())) {
                meeting.ends().stream().filter(PlanMeeting.End::isEnd)
                        .flatMap(end -> storey.wall(end.wall()).map(stem -> stem(stem, end)).stream())
                        .filter(this::isHere).map(Found::stem).forEach(stems::add);
            }
        }
        stems.sort(Comparator.comparing(Stem::from));
        return stems;
    }

    private record Found(Stem stem, boolean onLeft) {
    }

    private boolean isHere(Found found) {
        return found.onLeft() == left;
    }

    private Found stem(WallShape stem, PlanMeeting.End end) {
        boolean start = end.place() == org.coursewright.core.geometry.Place.START;
        Length one = wall.offset(stem.outline().get(start ? 0 : 1));
        Length other = wall.offset(stem.outline().get(start ? 3 : 2));
        Heading out = start ? stem.heading() : stem.heading().reversed();
        Stem found = one.isLessThan(other)
                ? new Stem(stem.wall(), one, other)
                : new Stem(stem.wall(), other, one);
        return new Found(found, wall.heading().cross(out) > 0);
    }
}
