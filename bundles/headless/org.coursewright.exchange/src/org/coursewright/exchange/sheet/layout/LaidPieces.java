package org.coursewright.exchange.sheet.layout;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;

/** What pieces a wall takes. */
final class LaidPieces {

    private static final int LETTERS = 26;

    private final WallLayout layout;
    private final SheetFormat format;

    LaidPieces(WallLayout layout, SheetFormat format) {
        this.layout = layout;
        this.format = format;
    }

    /** @return how many pieces of a kind there are of each length as shown, the shortest first */
    TreeMap<Length, Long> counts(Piece.Kind kind) {
        return pieces().filter(piece -> piece.kind() == kind)
                .collect(Collectors.groupingBy(piece -> format.shown(piece.length()), TreeMap::new,
                        Collectors.counting()));
    }

    /** @return a letter for every length that is cut, the shortest is a */
    Map<Length, String> letters() {
        List<Length> lengths = List.copyOf(counts(Piece.Kind.CUT).keySet());
        return lengths.stream().collect(Collectors.toMap(Function.identity(),
                length -> letter(lengths.indexOf(length))));
    }

    /** @return whether any course ends under a rake */
    boolean isRaked() {
        return runs().anyMatch(run -> run.startsWith() == RunEnd.RAKE || run.endsWith() == RunEnd.RAKE);
    }

    Stream<Run> runs() {
        return layout.courses().stream().flatMap(course -> course.runs().stream());
    }

    private Stream<Piece> pieces() {
        return runs().flatMap(run -> run.pieces().stream());
    }

    private static String letter(int index) {
        String last = String.valueOf((char) ('a' + index % LETTERS));
        return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
    }
}
