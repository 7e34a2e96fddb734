package org.coursewright.exchange.schedule;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.exchange.remark.Place;
import org.coursewright.measure.Length;

/**
 * Common sizes of masonry units, for schedules that bring none of their own.
 *
 * <p>Each carries in its note how well the size is vouched for. A mark is found however its blanks and multiplication
 * signs are written, with or without its unit: {@code 14x10x4} is {@code 14 x 10 x 4 in}.
 */
final class BuiltInUnits {

    private static final Place CATALOGUE = Place.of("built-in catalogue");

    private final List<UnitRow> units = Stream.concat(inchSizes(), metricSizes()).toList();

    Optional<UnitRow> find(String mark) {
        return units.stream().filter(unit -> key(unit.mark()).equals(key(mark))).findFirst();
    }

    /** @return the marks, for messages */
    List<String> marks() {
        return units.stream().map(UnitRow::mark).toList();
    }

    private static String key(String mark) {
        return mark.toLowerCase(Locale.ROOT).replace('\u00D7', 'x').replaceAll("\\s", "").replaceFirst("(in|mm)$", "");
    }

    private static Stream<UnitRow> inchSizes() {
        String adobe = "Regional adobe size; from memory, to be verified.";
        return Stream.of(
                inches(14, 10, 8, "4", Optional.of(MassCell.ofPounds(BigDecimal.valueOf(30))),
                        "Usual adobe size, about 30 lb; from memory of New Mexico Bureau of Mines Bulletins 127 and 159."),
                inches(14, 10, 7, "3 1/2", Optional.empty(),
                        "Usual size of hydraulically pressed blocks; common practice, no source. The height varies with "
                                + "soil moisture and mould fill: measure and sort."),
                inches(16, 12, 8, "4", Optional.empty(), adobe), inches(16, 8, 8, "4", Optional.empty(), adobe),
                inches(12, 8, 8, "4", Optional.empty(), adobe));
    }

    private static Stream<UnitRow> metricSizes() {
        String press = "Usual size of manually pressed blocks; from memory, to be verified.";
        String standard = "Size of IS 1725; from memory, to be verified against the current edition.";
        return Stream.of(metric(290, 140, 90, press), metric(295, 140, 90, press), metric(290, 140, 100, press),
                metric(240, 240, 90, press), metric(190, 90, 90, standard), metric(290, 90, 90, standard),
                metric(290, 190, 90, standard));
    }

    private static UnitRow inches(int length, int width, int halfInches, String height, Optional<BigDecimal> mass,
            String note) {
        return new UnitRow(CATALOGUE, "%d x %d x %s in".formatted(length, width, height), Length.ofInches(length),
                Length.ofInches(width), Length.ofInchFraction(halfInches, 2), mass, List.of(), Optional.empty(),
                Optional.empty(), Optional.empty(), note);
    }

    private static UnitRow metric(int length, int width, int height, String note) {
        return new UnitRow(CATALOGUE, "%d x %d x %d mm".formatted(length, width, height), Length.ofMillimetres(length),
                Length.ofMillimetres(width), Length.ofMillimetres(height), Optional.empty(), List.of(),
                Optional.empty(), Optional.empty(), Optional.empty(), note);
    }
}
