package org.coursewright.exchange.schedule;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.coursewright.exchange.remark.Shown;
import org.coursewright.exchange.table.Cells;
import org.coursewright.measure.DisplayUnit;

/** Reads a mass in kilograms or pounds; a bare number is pounds where lengths are inches, otherwise kilograms. */
final class MassCell {

    /** One pound is exactly this (kg): international yard and pound agreement of 1959, also in NIST SP 811. */
    static final BigDecimal KILOGRAMS_PER_POUND = new BigDecimal("0.45359237");

    private static final BigDecimal MOST = BigDecimal.valueOf(1000);
    private static final Pattern MASS = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*(kg|lb)?");

    private final DisplayUnit display;

    MassCell(DisplayUnit display) {
        this.display = display;
    }

    Optional<BigDecimal> read(Cells cells) {
        String text = cells.text("mass");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher mass = MASS.matcher(text);
        BigDecimal kilograms = mass.matches() ? kilograms(mass) : BigDecimal.ZERO;
        if (kilograms.signum() <= 0 || kilograms.compareTo(MOST) > 0) {
            cells.wrong("mass", "%s is no mass of a unit: enter a number above 0 and up to 1000 kg, with kg or lb."
                    .formatted(Shown.quoted(text)));
        }
        return Optional.of(kilograms);
    }

    private BigDecimal kilograms(Matcher mass) {
        BigDecimal number = new BigDecimal(mass.group(1));
        String bare = display == DisplayUnit.INCH ? "lb" : "kg";
        boolean pounds = "lb".equals(Optional.ofNullable(mass.group(2)).orElse(bare));
        return pounds ? ofPounds(number) : plain(number);
    }

    /** @return the mass of so many pounds (kg), exactly */
    static BigDecimal ofPounds(BigDecimal pounds) {
        return plain(pounds.multiply(KILOGRAMS_PER_POUND));
    }

    private static BigDecimal plain(BigDecimal kilograms) {
        BigDecimal stripped = kilograms.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
