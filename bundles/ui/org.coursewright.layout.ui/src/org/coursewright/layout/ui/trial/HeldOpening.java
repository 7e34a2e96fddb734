package org.coursewright.layout.ui.trial;

import org.coursewright.layout.ui.part.OpeningGrip;
import org.coursewright.model.building.Opening;

/**
 * An opening whose places are of interest.
 *
 * @param opening of a wall
 * @param grip what of it would be moved
 */
public record HeldOpening(Opening opening, OpeningGrip grip) {
}
