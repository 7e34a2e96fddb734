package org.coursewright.core.takeoff.hand;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.coursewright.bond.Course;
import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;

/**
 * One run of a laid building as a row of a table: the layout that the sheet was worked from. Lengths are in millimetres, with
 * all decimals they have.
 *
 * @param wall its mark
 * @param course in which the run lies
 * @param run from end to end, with its pieces
 */
record LaidRow(String wall, Course course, Run run) {

    static final String HEADER = "wall,course,level,bottom,height,from,to,top_from,top_to,run_from,run_to,starts,ends,"
            + "joints,pieces";

    private static final BigDecimal UNITS = BigDecimal.valueOf(Length.UNITS_PER_MILLIMETRE);

    static List<LaidRow> of(List<WallLayout> walls) {
        List<LaidRow> rows = new ArrayList<>();
        for (WallLayout wall : walls) {
            for (CourseLayout course : wall.courses()) {
                course.runs().forEach(run -> rows.add(new LaidRow(wall.mark(), course.course(), run)));
            }
        }
        return rows;
    }

    static LaidRow parse(String line) {
        String[] cells = line.split(",");
        Course course = new Course(Integer.parseInt(cells[1]), Integer.parseInt(cells[2]), length(cells[3]), length(
                cells[4]), length(cells[5]), length(cells[6]), length(cells[7]), length(cells[8]));
        return new LaidRow(cells[0], course, new Run(length(cells[9]), length(cells[10]), RunEnd.valueOf(cells[11]
                .toUpperCase(Locale.ROOT)), RunEnd.valueOf(cells[12].toUpperCase(Locale.ROOT)), Optional.empty(),
                Integer
                        .parseInt(cells[13]),
                pieces(cells[14])));
    }

    /** Pieces such as {@code W355.6*3 S171.45}: whole, special or cut, their length, how many alike follow one another. */
    private static List<Piece> pieces(String cell) {
        List<Piece> pieces = new ArrayList<>();
        for (String group : cell.split(" ")) {
            String[] parts = group.substring(1).split("\\*");
            Piece piece = new Piece(length(parts[0]), kind(group.charAt(0)));
            for (int i = 0; i < (parts.length > 1 ? Integer.parseInt(parts[1]) : 1); i++) {
                pieces.add(piece);
            }
        }
        return pieces;
    }

    private static Piece.Kind kind(char letter) {
        return switch (letter) {
            case 'W' -> Piece.Kind.WHOLE;
            case 'S' -> Piece.Kind.SPECIAL;
            case 'C' -> Piece.Kind.CUT;
            default -> throw new IllegalArgumentException("A piece of kind " + letter);
        };
    }

    String line() {
        return String
                .join(",", wall, String.valueOf(course.number()), String.valueOf(course.level()), mm(course.bottom()),
                        mm(course.height()), mm(course.from()), mm(course.to()), mm(course.topFrom()),
                        mm(course.topTo()), mm(run
                                .from()),
                        mm(run.to()), run.startsWith().name().toLowerCase(Locale.ROOT), run.endsWith().name()
                                .toLowerCase(Locale.ROOT),
                        String.valueOf(run.jointCount()), groups());
    }

    private String groups() {
        List<String> groups = new ArrayList<>();
        int alike = 0;
        for (int i = 0; i < run.pieces().size(); i++) {
            alike++;
            boolean last = i + 1 == run.pieces().size() || !run.pieces().get(i + 1).equals(run.pieces().get(i));
            if (last) {
                Piece piece = run.pieces().get(i);
                groups.add(piece.kind().name().charAt(0) + mm(piece.length()) + (alike > 1 ? "*" + alike : ""));
                alike = 0;
            }
        }
        return groups.stream().collect(Collectors.joining(" "));
    }

    static String mm(Length length) {
        return BigDecimal.valueOf(length.units()).divide(UNITS).stripTrailingZeros().toPlainString();
    }

    private static Length length(String millimetres) {
        return Length.ofUnits(new BigDecimal(millimetres).multiply(UNITS).longValueExact());
    }
}
