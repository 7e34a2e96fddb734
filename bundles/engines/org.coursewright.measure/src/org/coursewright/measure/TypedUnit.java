package org.coursewright.measure;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A unit that may follow a number, and how people write it. */
enum TypedUnit {

    FOOT(12 * Length.UNITS_PER_INCH, "'", "ft", "ft.", "foot", "feet"), INCH(Length.UNITS_PER_INCH, "\"", "''", "in",
            "in.", "inch", "inches"), MILLIMETRE(Length.UNITS_PER_MILLIMETRE, "mm"), CENTIMETRE(
                    10 * Length.UNITS_PER_MILLIMETRE, "cm"), METRE(1000 * Length.UNITS_PER_MILLIMETRE, "m");

    private final long units;
    private final List<String> spellings;

    TypedUnit(long units, String... spellings) {
        this.units = units;
        this.spellings = List.of(spellings);
    }

    static Optional<TypedUnit> find(String spelling) {
        String small = spelling.toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(unit -> unit.spellings.contains(small)).findFirst();
    }

    /** @return what a bare number stands for where {@code display} is shown */
    static TypedUnit of(DisplayUnit display) {
        return display == DisplayUnit.INCH ? INCH : MILLIMETRE;
    }

    /** @return the length of one, in units of 1/320 mm */
    long units() {
        return units;
    }

    /** @return whether people write fractions of it */
    boolean takesFractions() {
        return this == FOOT || this == INCH;
    }
}
