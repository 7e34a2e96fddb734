package org.coursewright.layout.ui.plan.shape;

import java.util.Optional;

import org.coursewright.core.bond.JointRange;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;

/**
 * What a wall is drawn and stepped by. In half bond, units of one course end where those of the next are in the middle:
 * from the outer start face on, they end at multiples of half a module less a joint, and begin at such multiples.
 *
 * @param thickness across the wall
 * @param unit length of a unit along the wall
 * @param joint head joint aimed at
 */
public record WallModule(Length thickness, Length unit, Length joint) {

    /** For walls that no unit type has been chosen for (common practice, no source). */
    private static final Length ASSUMED = Length.ofMillimetres(200);

    public WallModule {
        if (thickness.signum() <= 0 || unit.signum() <= 0 || joint.signum() < 0) {
            throw new IllegalArgumentException(
                    "A wall must have a thickness (%s), a unit (%s) and a joint (%s).".formatted(thickness, unit,
                            joint));
        }
    }

    /**
     * @param wall to be built or drawn; need not be in the project yet
     * @param project whose rule holds where the wall has none
     * @return what the wall is stepped by
     */
    public static WallModule of(Wall wall, Project project) {
        Length joint = joint(wall.getBondRule()).or(() -> joint(project.getBondRule()))
                .orElseGet(() -> JointRange.usual(ProjectFormat.of(project).unit()).nominal());
        UnitType unit = wall.getUnitType();
        if (unit == null || !isGiven(unit.getLength()) || !isGiven(unit.getWidth())) {
            return new WallModule(ASSUMED, ASSUMED.times(2), joint);
        }
        return wall.getBond() == Bond.HEADER
                ? new WallModule(unit.getLength(), unit.getWidth(), joint)
                : new WallModule(unit.getWidth(), unit.getLength(), joint);
    }

    private static Optional<Length> joint(BondRule rule) {
        return Optional.ofNullable(rule).map(BondRule::getHeadNominal).filter(length -> length.signum() >= 0);
    }

    private static boolean isGiven(Length length) {
        return length != null && length.signum() > 0;
    }

    /**
     * @param display whose round numbers are used
     * @return what is stepped by where there is no wall
     */
    public static WallModule usual(DisplayUnit display) {
        return new WallModule(ASSUMED, ASSUMED.times(2), JointRange.usual(display).nominal());
    }

    /** @return a unit and a joint, halved: the step of jambs and wall ends */
    public Length step() {
        return Length.ofUnits(unit.plus(joint).units() / 2);
    }

    /** @return half the thickness */
    public Length half() {
        return Length.ofUnits(thickness.units() / 2);
    }

    /**
     * @param offset from the outer start face
     * @return the nearest place where a unit ends, at least zero
     */
    public Length nearJamb(Length offset) {
        Length steps = round(offset.plus(joint)).minus(joint);
        return steps.signum() < 0 ? Length.ZERO : steps;
    }

    /**
     * @param offset from the outer start face
     * @return the nearest place where a unit begins
     */
    public Length farJamb(Length offset) {
        return round(offset);
    }

    /**
     * @param width between jambs
     * @return the nearest width at which both jambs are at whole places, at least one
     */
    public Length opening(Length width) {
        Length steps = round(width.minus(joint));
        return (steps.signum() > 0 ? steps : step()).plus(joint);
    }

    /**
     * @param length from outer face to outer face
     * @return the nearest length of whole and half units and the joints between them, at least one unit
     */
    public Length outer(Length length) {
        Length steps = round(length.plus(joint)).minus(joint);
        return steps.isLessThan(unit) ? unit : steps;
    }

    /**
     * @param length any
     * @return the nearest multiple of the step
     */
    public Length round(Length length) {
        return step().times(Math.floorDiv(length.units() + step().units() / 2, step().units()));
    }
}
