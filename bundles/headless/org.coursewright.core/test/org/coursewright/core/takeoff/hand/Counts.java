package org.coursewright.core.takeoff.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

import org.coursewright.bond.Piece;
import org.coursewright.measure.Length;

/**
 * What is counted in a layout of the demo, and nothing else: pieces, the lengths of runs, the widths of joints. The names are
 * those in the workings of the sheet; lengths are in millimetres.
 */
final class Counts {

    /** Gables and the north wall show headers: 10 in of each block in the face, 14 in of wall. */
    private static final Set<String> HEADER_WALLS = Set.of("W2", "W3", "W4");
    private static final BigDecimal COURSE = new BigDecimal("114.3");
    private static final BigDecimal KERF = new BigDecimal("4.7625");
    private static final String STRETCHER_FACE = "355.6";
    private static final String HEADER_FACE = "254";

    private Counts() {
    }

    static Map<String, BigDecimal> of(List<LaidRow> rows) {
        assertThat(rows).allSatisfy(row -> assertThat(LaidRow.mm(row.course().height())).isEqualTo(COURSE
                .toPlainString()));
        Map<String, BigDecimal> counts = new LinkedHashMap<>();
        List<LaidRow> stretchers = rows.stream().filter(row -> !HEADER_WALLS.contains(row.wall())).toList();
        List<LaidRow> headers = rows.stream().filter(row -> HEADER_WALLS.contains(row.wall())).toList();
        counts.put("stretcher.whole", pieces(stretchers, Piece.Kind.WHOLE, ""));
        counts.put("stretcher.halves", pieces(stretchers, Piece.Kind.SPECIAL, "171.45"));
        counts.put("stretcher.closers", pieces(stretchers, Piece.Kind.SPECIAL, "254"));
        counts.put("stretcher.cut", pieces(stretchers, Piece.Kind.CUT, ""));
        counts.put("stretcher.cut_up", cutUp(stretchers, STRETCHER_FACE));
        counts.put("header.whole", pieces(headers, Piece.Kind.WHOLE, ""));
        counts.put("header.cut", pieces(headers, Piece.Kind.CUT, ""));
        counts.put("header.cut_up", cutUp(headers, HEADER_FACE));
        Predicate<LaidRow> first = row -> row.course().number() == 1;
        putMortar("first.stretcher", stretchers.stream().filter(first).toList(), counts);
        putMortar("first.header", headers.stream().filter(first).toList(), counts);
        putMortar("other.stretcher", stretchers.stream().filter(first.negate()).toList(), counts);
        putMortar("other.header", headers.stream().filter(first.negate()).toList(), counts);
        return counts;
    }

    private static BigDecimal pieces(List<LaidRow> rows, Piece.Kind kind, String length) {
        return BigDecimal.valueOf(rows.stream().flatMap(row -> row.run().pieces().stream()).filter(piece -> piece
                .kind() == kind && (length.isEmpty() || LaidRow.mm(piece.length()).equals(length))).count());
    }

    private static BigDecimal cutUp(List<LaidRow> rows, String face) {
        Packing packing = new Packing(new BigDecimal(face), KERF,
                rows.stream().flatMap(row -> row.run().pieces().stream())
                        .filter(piece -> piece.kind() == Piece.Kind.CUT)
                        .map(piece -> new BigDecimal(LaidRow.mm(piece.length())))
                        .toList());
        assertThat(packing.atLeast()).as("units of %s mm that the cut pieces take at least", face).isEqualTo(packing
                .units());
        return BigDecimal.valueOf(packing.units());
    }

    /** The length of all runs, which have a bed joint under them, and the widths of all their head joints. */
    private static void putMortar(String name, List<LaidRow> rows, Map<String, BigDecimal> counts) {
        BigDecimal bed = rows.stream().map(row -> mm(row.run().length())).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal units = rows.stream().flatMap(row -> row.run().pieces().stream()).map(piece -> mm(piece.length()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        counts.put(name + ".bed", bed.stripTrailingZeros());
        counts.put(name + ".head", bed.subtract(units).stripTrailingZeros());
    }

    private static BigDecimal mm(Length length) {
        return new BigDecimal(LaidRow.mm(length));
    }
}
