package org.coursewright.takeoff.quantities;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A whole unit as it is bought or pressed; solid, without cores.
 *
 * @param type name of the unit type, for example in the catalogue
 * @param length greater than zero
 * @param width greater than zero
 * @param height greater than zero
 */
public record UnitShape(String type, Length length, Length width, Length height) {

    public UnitShape {
        Objects.requireNonNull(type, "type");
        require(length.signum() > 0 && width.signum() > 0 && height.signum() > 0,
                "Unit type %s measures %s × %s × %s: give it length, width and height above zero.", type, length,
                width, height);
    }
}
