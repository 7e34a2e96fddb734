package org.coursewright.bond;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/**
 * A stretch of one course between ends or obstacles, filled exactly: the pieces and {@code jointCount} equal joints add
 * up to {@code to - from}.
 *
 * @param from where it begins along the wall
 * @param to where it ends along the wall, greater than {@code from}
 * @param startsWith how it begins
 * @param endsWith how it ends
 * @param joint the width of each joint, empty if the run has none
 * @param jointCount joints between pieces and at ends that are joints
 * @param pieces from start to end, at least one
 */
public record Run(Length from, Length to, RunEnd startsWith, RunEnd endsWith, Optional<LengthRatio> joint,
        int jointCount,
        List<Piece> pieces) {

    public Run {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(startsWith, "startsWith");
        Objects.requireNonNull(endsWith, "endsWith");
        Objects.requireNonNull(joint, "joint");
        pieces = List.copyOf(pieces);
    }

    /** @return {@code to - from} */
    public Length length() {
        return to.minus(from);
    }
}
