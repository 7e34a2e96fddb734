package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.stream.Collectors;

import org.coursewright.bond.Piece;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.layout.Table.Column;
import org.coursewright.measure.Length;

/** The piece list and the cut list of a wall. */
final class PieceTables {

    private final SheetWall wall;
    private final SheetFormat format;
    private final LaidPieces pieces;
    private final Map<Length, String> letters;

    PieceTables(SheetWall wall, SheetFormat format) {
        this.wall = wall;
        this.format = format;
        this.pieces = new LaidPieces(wall.layout(), format);
        this.letters = pieces.letters();
    }

    /** @return whole units, specials and cut pieces with their counts */
    Table pieceList() {
        List<List<String>> rows = new ArrayList<>();
        add(rows, "whole", Piece.Kind.WHOLE);
        add(rows, "special", Piece.Kind.SPECIAL);
        add(rows, "cut", Piece.Kind.CUT);
        List<String> note = pieces.isRaked()
                ? List.of("Under the rake: length at the bottom of the course;", "mark the slope at the wall.")
                : List.of();
        return new Table("Piece list", note,
                List.of(Column.left("piece"), Column.left("key"), Column.right("length"), Column.right("count")), rows);
    }

    /** @return what to cut from each unit; no rows if nothing is cut */
    Table cutList() {
        NavigableMap<Length, Long> cut = pieces.counts(Piece.Kind.CUT);
        List<CutPlan.Line> lines = CutPlan.of(cut, wall.face().stock());
        long units = lines.stream().mapToLong(CutPlan.Line::units).sum();
        List<List<String>> rows = lines.stream().map(line -> List.of(String.valueOf(line.units()),
                line.pieces().stream().map(this::named).collect(Collectors.joining(" + ")), format.length(line.left())))
                .toList();
        return new Table("Cut list: %d units for %d pieces".formatted(units, wall.layout().cutPieces()),
                List.of("Kerf %s. Longest first, from the shortest offcut".formatted(format.length(wall.face().stock()
                        .kerf())), "that serves; not proven to take the fewest units."),
                List.of(Column.right("units"), Column.left("cut each into"), Column.right("left")), rows);
    }

    private void add(List<List<String>> rows, String word, Piece.Kind kind) {
        pieces.counts(kind).forEach((length, count) -> rows.add(List.of(word,
                kind == Piece.Kind.CUT ? letters.get(length) : "", format.length(length), String.valueOf(count))));
    }

    private String named(Length length) {
        return letters.get(length) + " " + format.length(length);
    }
}
