package org.coursewright.layout.ui.trial;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.model.building.Opening;

/**
 * How a wall would be laid were an opening elsewhere.
 *
 * @param opening which
 * @param place where it would be
 * @param outcome of laying the wall so; without the wall if it cannot be laid
 */
public record Tried(Opening opening, OpeningPlace place, LayoutOutcome outcome) {
}
