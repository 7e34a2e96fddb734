package org.coursewright.core.validity;

import java.util.List;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.TopPoint;
import org.coursewright.model.building.Wall;

/** Whether a wall by itself makes sense: that it has a mark, a length, a height and a unit type. */
public final class WallValidity {

    private final LengthFormat format;
    private final Findings findings;

    /**
     * @param format how findings write lengths
     * @param findings hears what is not sound
     */
    public WallValidity(LengthFormat format, Findings findings) {
        this.format = format;
        this.findings = findings;
    }

    /**
     * Checks a wall without its openings.
     *
     * @param wall the wall, not null
     * @return whether it can be placed in the plan; if not, the findings say why
     */
    public boolean isSound(Wall wall) {
        ElementReference element = ElementNames.of(wall);
        if (wall.getMark() == null || wall.getMark().isBlank()) {
            findings.invalid("wall.no-mark", element, "It has no mark. Give it one, such as W1.");
            return false;
        }
        if (wall.getUnitType() == null) {
            findings.invalid("wall.no-unit", element, "It has no unit type. Choose what it is laid of.");
            return false;
        }
        return isPlaced(wall, element) && isHigh(element, wall.getHeight()) && hasTop(wall, element);
    }

    private boolean isPlaced(Wall wall, ElementReference element) {
        for (Length coordinate : List.of(wall.getFromX(), wall.getFromY(), wall.getToX(), wall.getToY(),
                wall.getBase())) {
            if (coordinate.abs().isGreaterThan(Limits.FARTHEST)) {
                findings.invalid("wall.too-far", element,
                        "Its coordinate %s lies farther out than %s. Check the unit of measure."
                                .formatted(format.format(coordinate), format.format(Limits.FARTHEST)));
                return false;
            }
        }
        if (wall.getFromX().equals(wall.getToX()) && wall.getFromY().equals(wall.getToY())) {
            findings.invalid("wall.zero-length", element,
                    "Its centre line begins and ends at the same point. Give it two different ends or take it out.");
            return false;
        }
        Length reach = longer(wall.getFromX().minus(wall.getToX()).abs(), wall.getFromY().minus(wall.getToY()).abs());
        if (reach.isGreaterThan(Limits.LONGEST_WALL)) {
            findings.invalid("wall.too-long", element, "It is longer than %s. Check the unit of measure."
                    .formatted(format.format(Limits.LONGEST_WALL)));
            return false;
        }
        return true;
    }

    private static Length longer(Length one, Length other) {
        return one.isLessThan(other) ? other : one;
    }

    private boolean isHigh(ElementReference element, Length height) {
        if (height.signum() <= 0 || height.isGreaterThan(Limits.HIGHEST_WALL)) {
            findings.invalid("wall.height", element, "Its height of %s must be more than nothing and at most %s."
                    .formatted(format.format(height), format.format(Limits.HIGHEST_WALL)));
            return false;
        }
        return true;
    }

    private boolean hasTop(Wall wall, ElementReference element) {
        for (TopPoint point : wall.getTopProfile()) {
            if (point.getHeight().signum() < 0 || point.getHeight().isGreaterThan(Limits.HIGHEST_WALL)
                    || point.getOffset().signum() < 0 || point.getOffset().isGreaterThan(Limits.LONGEST_WALL)) {
                findings.invalid("wall.top", element,
                        "A point of its top, %s along and %s high, lies outside the wall. Correct or remove it."
                                .formatted(format.format(point.getOffset()), format.format(point.getHeight())));
                return false;
            }
        }
        return true;
    }
}
