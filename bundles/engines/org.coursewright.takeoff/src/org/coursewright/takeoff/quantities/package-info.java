/**
 * Pieces and mortar of laid walls, course by course, from the pieces and joints themselves and never by area.
 *
 * <p>Start with {@link org.coursewright.takeoff.quantities.WallTakeoff}: a
 * {@link org.coursewright.takeoff.quantities.LaidWall} in, {@link org.coursewright.takeoff.quantities.WallQuantities}
 * out. All volumes are exact: units, mortar and joints left open add up to the wall. Mortar formulas: the bed joint runs
 * under units and head joints alike, head joints are as high as the units (geometry; the same split as in BIA Technical
 * Note 10 and as in tables for concrete masonry).
 */
package org.coursewright.takeoff.quantities;
