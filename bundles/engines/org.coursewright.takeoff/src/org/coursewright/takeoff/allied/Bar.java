package org.coursewright.takeoff.allied;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.List;
import java.util.Objects;

import org.coursewright.takeoff.Fraction;

/**
 * A size of reinforcing bar.
 *
 * @param designation such as {@code #4}
 * @param massPerMetre kg/m, greater than zero
 */
public record Bar(String designation, Fraction massPerMetre) {

    public Bar {
        Objects.requireNonNull(designation, "designation");
        require(massPerMetre.signum() > 0, "Bar %s has a mass of %s kg/m: give more than zero.", designation,
                massPerMetre.toDecimal());
    }

    /** @return inch sizes #3 to #8 with their nominal masses by ASTM A615, table 1; from memory */
    public static List<Bar> inchSizes() {
        return List.of(new Bar("#3", Fraction.of("0.560")), new Bar("#4", Fraction.of("0.994")), new Bar("#5", Fraction
                .of("1.552")), new Bar("#6", Fraction.of("2.235")), new Bar("#7", Fraction.of("3.042")), new Bar("#8",
                        Fraction.of("3.973")));
    }

    /** @return sizes of 6 to 25 mm with their nominal masses by EN 10080 (steel of 7850 kg/m³); from memory */
    public static List<Bar> metricSizes() {
        return List.of(new Bar("6 mm", Fraction.of("0.222")), new Bar("8 mm", Fraction.of("0.395")), new Bar("10 mm",
                Fraction.of("0.617")), new Bar("12 mm", Fraction.of("0.888")), new Bar("16 mm", Fraction.of("1.58")),
                new Bar("20 mm", Fraction.of("2.47")), new Bar("25 mm", Fraction.of("3.85")));
    }
}
