package org.coursewright.takeoff.mix;

import org.coursewright.takeoff.Fraction;

/** Ingredients to mix; densities by ASTM C270 (94 and 80 lb/ft³ loose) from memory, rounded. */
final class Ingredients {

    static final Ingredient CEMENT = new Ingredient("cement", true, Density.of(1506, 1852, 3150), Moisture.DRY);
    static final Ingredient SAND = new Ingredient("sand", false, Density.of(1281, 1600, 2650), Moisture.DRY);

    private Ingredients() {
    }

    /** Sand with 5 % of moisture, by 25 % larger in volume than dry. */
    static Ingredient dampSand() {
        return new Ingredient("sand", false, SAND.density(), new Moisture(Fraction.of("0.05"), Fraction.ZERO, Fraction
                .of("0.25")));
    }
}
