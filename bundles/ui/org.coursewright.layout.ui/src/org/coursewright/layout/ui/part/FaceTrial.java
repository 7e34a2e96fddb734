package org.coursewright.layout.ui.part;

import java.util.Optional;

import org.coursewright.layout.ui.face.FaceDrawing;

/**
 * How a wall would be laid with one of its openings elsewhere.
 *
 * @param place where the opening would be
 * @param drawing of the wall, empty if it cannot be laid so
 */
public record FaceTrial(OpeningPlace place, Optional<FaceDrawing> drawing) {
}
