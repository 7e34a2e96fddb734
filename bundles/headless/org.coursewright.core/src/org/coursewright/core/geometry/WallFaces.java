package org.coursewright.core.geometry;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * How long a wall is, on its centre line, from outer face to outer face, and on either hand. What other walls that end
 * against its side cover is not taken off. Where thick walls leave a short one nothing, lengths but the first can be zero
 * or negative.
 *
 * @param mark the wall's mark
 * @param centreLine from end to end of the centre line
 * @param startExtension how far the outer start face lies before the start of the centre line; negative if after it
 * @param endExtension how far the outer end face lies beyond the end of the centre line; negative if before it
 * @param outer from outer start face to outer end face: {@code centreLine + startExtension + endExtension}
 * @param left length of the face on the left hand as one looks from start to end
 * @param right length of the face on the right hand
 */
public record WallFaces(String mark, Length centreLine, Length startExtension, Length endExtension, Length outer,
        Length left, Length right) {

    public WallFaces {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(centreLine, "centreLine");
        Objects.requireNonNull(startExtension, "startExtension");
        Objects.requireNonNull(endExtension, "endExtension");
        Objects.requireNonNull(outer, "outer");
        Objects.requireNonNull(left, "left");
        Objects.requireNonNull(right, "right");
    }
}
