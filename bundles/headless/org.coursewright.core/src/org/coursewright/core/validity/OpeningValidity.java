package org.coursewright.core.validity;

import java.util.List;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;

/** Whether the openings of a wall lie inside it and beside one another. */
public final class OpeningValidity {

    private final LengthFormat format;
    private final Findings findings;

    /**
     * @param format how findings write lengths
     * @param findings hears what is not sound
     */
    public OpeningValidity(LengthFormat format, Findings findings) {
        this.format = format;
        this.findings = findings;
    }

    /**
     * Checks the openings of a wall.
     *
     * @param wall the wall, not null
     * @param length of the wall from outer face to outer face
     * @param top how high the wall is above its base
     * @return whether all its openings are sound; if not, the findings say which and why
     */
    public boolean areSound(Wall wall, Length length, TopLine top) {
        boolean sound = true;
        List<Opening> openings = wall.getOpenings();
        for (int i = 0; i < openings.size(); i++) {
            Opening opening = openings.get(i);
            sound &= isSized(wall, opening) && isInside(wall, opening, length, top);
            for (Opening other : openings.subList(0, i)) {
                sound &= isApart(wall, opening, other);
            }
        }
        return sound;
    }

    private boolean isSized(Wall wall, Opening opening) {
        ElementReference element = ElementNames.of(opening, wall);
        if (opening.getMark() == null || opening.getMark().isBlank()) {
            findings.invalid("opening.no-mark", element, "It has no mark. Give it one, such as D1.");
            return false;
        }
        if (opening.getWidth().signum() <= 0 || opening.getHeight().signum() <= 0) {
            findings.invalid("opening.size", element, "Its width of %s and height of %s must both be more than nothing."
                    .formatted(format.format(opening.getWidth()), format.format(opening.getHeight())));
            return false;
        }
        return true;
    }

    private boolean isInside(Wall wall, Opening opening, Length length, TopLine top) {
        Length end = end(opening);
        if (opening.getOffset().signum() < 0 || end.isGreaterThan(length)) {
            findings.invalid("opening.beyond-wall", ElementNames.of(opening, wall),
                    "It reaches from %s to %s, but the wall from 0 to %s. Move it or make it narrower."
                            .formatted(format.format(opening.getOffset()), format.format(end), format.format(length)));
            return false;
        }
        Length room = top.lowestBetween(opening.getOffset(), end);
        if (opening.getSill().signum() < 0 || head(opening).isGreaterThan(room)) {
            findings.invalid("opening.beyond-top", ElementNames.of(opening, wall),
                    "It reaches from %s to %s above the base, but the wall there from 0 to %s. Lower it or make it less high."
                            .formatted(format.format(opening.getSill()), format.format(head(opening)),
                                    format.format(room)));
            return false;
        }
        return true;
    }

    private boolean isApart(Wall wall, Opening one, Opening other) {
        boolean apart = !end(one).isGreaterThan(other.getOffset()) || !end(other).isGreaterThan(one.getOffset())
                || !head(one).isGreaterThan(other.getSill()) || !head(other).isGreaterThan(one.getSill());
        if (!apart) {
            findings.invalid("opening.overlap", ElementNames.of(one, wall),
                    "It overlaps opening %s. Move one of them.".formatted(other.getMark()));
        }
        return apart;
    }

    private static Length end(Opening opening) {
        return opening.getOffset().plus(opening.getWidth());
    }

    private static Length head(Opening opening) {
        return opening.getSill().plus(opening.getHeight());
    }
}
