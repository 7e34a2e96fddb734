package org.coursewright.bond;

import java.util.List;
import java.util.Objects;

/**
 * How one wall is laid.
 *
 * @param mark the wall's mark
 * @param courses from the bottom up
 * @param cutPieces pieces that have to be cut, those along a rake included; {@link CutReasons} says why
 * @param shortLaps pairs of joints in consecutive courses that lap less than the least lap, straight joints left out
 * @param straightJoints pairs of joints in consecutive courses that lie over one another because both runs end at the same
 *        place against other masonry: beside a wall this one is tied to, or beside a lintel or beam more than one course
 *        high. Nobody can lap them; they are there by decision
 * @param unfillable runs that no allowed pieces and joints fill, with the reason; they carry no pieces
 * @param optimal whether no layout of this wall, its corners handed as they are, has fewer lap violations or, with as
 *        few, fewer cut pieces; proven, not guessed
 * @param lowerBound cut pieces that every layout with as few lap violations needs at least; equals {@code cutPieces}
 *        when optimal
 */
public record WallLayout(String mark, List<CourseLayout> courses, int cutPieces, List<ShortLap> shortLaps,
        int straightJoints, List<UnfillableRun> unfillable, boolean optimal, int lowerBound) {

    public WallLayout {
        Objects.requireNonNull(mark, "mark");
        courses = List.copyOf(courses);
        shortLaps = List.copyOf(shortLaps);
        unfillable = List.copyOf(unfillable);
    }

    /**
     * The layout of an equal wall.
     *
     * @param otherMark that wall's mark, not null
     * @return this layout under that mark
     */
    public WallLayout under(String otherMark) {
        return new WallLayout(otherMark, courses, cutPieces, shortLaps, straightJoints, unfillable, optimal,
                lowerBound);
    }

    /** @return how many laps are short */
    public int lapViolations() {
        return shortLaps.size();
    }
}
