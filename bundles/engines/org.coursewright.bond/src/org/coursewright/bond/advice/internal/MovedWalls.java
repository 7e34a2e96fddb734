package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.KeepClear;
import org.coursewright.bond.advice.WallMove;
import org.coursewright.measure.Length;

/**
 * Walls moved sideways, no two of them meeting the same wall.
 *
 * @param moves in the order to make them
 */
record MovedWalls(List<Move> moves) {

    static final MovedWalls NONE = new MovedWalls(List.of());

    /** One wall and where it stands. */
    record Move(WallMove wall, WallMove.Place place) {
    }

    MovedWalls {
        moves = List.copyOf(moves);
    }

    MovedWalls and(Move move) {
        List<Move> longer = new ArrayList<>(moves);
        longer.add(move);
        return new MovedWalls(longer);
    }

    Length movement() {
        return moves.stream().map(move -> move.place().change().abs()).reduce(Length.ZERO, Length::plus);
    }

    /** The face of a wall that is changed by the moves. */
    Optional<WallFace> face(String mark) {
        return Optional.ofNullable(faces().get(mark));
    }

    /** The faces of walls that are changed by the moves, by mark. */
    Map<String, WallFace> faces() {
        Map<String, WallFace> faces = new HashMap<>();
        moves.forEach(move -> move.place().faces().forEach(face -> faces.put(face.mark(), face)));
        return faces;
    }

    /** What is to be kept clear then. */
    List<KeepClear> keepClear(List<KeepClear> planned) {
        Map<String, WallFace> faces = faces();
        List<KeepClear> kept = new ArrayList<>();
        planned.stream().filter(each -> !faces.containsKey(each.wall())).forEach(kept::add);
        moves.forEach(move -> kept.addAll(move.place().keepClear()));
        return kept;
    }
}
