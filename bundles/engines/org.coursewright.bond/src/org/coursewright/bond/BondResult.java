package org.coursewright.bond;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * How the walls of a request are laid.
 *
 * @param walls in the order of the request
 * @param throughOnOdd by meeting id the mark of the wall that runs through in odd courses
 * @param handingOptimal whether no layout of the whole building, whoever runs through where nobody has pinned it, has
 *        fewer runs left unfilled or, with as few, fewer lap violations or, with as few, fewer cut pieces; proven, not
 *        guessed
 * @param lowerBound cut pieces that every layout of the building with as few unfilled runs and lap violations needs at
 *        least, whoever runs through; equals the cut pieces of all walls when the handing is optimal, and is zero in a
 *        first answer, which does not look for it
 * @param effort whether this is a first answer or the answer
 */
public record BondResult(List<WallLayout> walls, Map<String, String> throughOnOdd, boolean handingOptimal,
        int lowerBound, Effort effort) {

    public BondResult {
        walls = List.copyOf(walls);
        throughOnOdd = Map.copyOf(throughOnOdd);
        Objects.requireNonNull(effort, "effort");
    }

    /** @return cut pieces of all walls */
    public int cutPieces() {
        return walls.stream().mapToInt(WallLayout::cutPieces).sum();
    }

    /** @return lap violations of all walls */
    public int lapViolations() {
        return walls.stream().mapToInt(WallLayout::lapViolations).sum();
    }
}
