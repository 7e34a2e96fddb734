package org.coursewright.layout.ui.face;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.measure.Length;

/**
 * A piece at its place in the wall.
 *
 * @param course number of its course
 * @param from where it begins along the wall, at the bottom of the course; rounded to 1/320 mm
 * @param to where it ends
 * @param piece what it is
 * @param run that it is part of
 */
public record PlacedPiece(int course, Length from, Length to, Piece piece, Run run) {
}
