package org.coursewright.layout.ui.strip;

import java.util.Optional;

import org.coursewright.layout.ui.paint.FaceInk;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.trial.PlaceCuts;
import org.coursewright.measure.LengthFormat;

/**
 * What the strip shows.
 *
 * @param opening what the opening is called, empty if none is selected
 * @param cuts by place, as far as they are known
 * @param at where the opening is, or is dragged to
 * @param ink to draw with
 * @param format of lengths
 */
public record StripContent(Optional<String> opening, Optional<PlaceCuts> cuts, Optional<OpeningPlace> at, FaceInk ink,
        LengthFormat format) {
}
