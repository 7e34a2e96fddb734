/**
 * Pieces and mortar of laid walls, course by course, from the pieces and joints themselves and never by area.
 *
 * <p>Start with {@link org.coursewright.takeoff.quantities.BuildingTakeoff}: a
 * {@link org.coursewright.takeoff.quantities.LaidWall} for every wall in,
 * {@link org.coursewright.takeoff.quantities.BuildingQuantities} out, and
 * {@link org.coursewright.takeoff.quantities.TakeoffFigures} for the lines to show. All volumes are exact: units, mortar and joints left open add up to the wall. Mortar formulas: the bed joint runs
 * under units and head joints alike, head joints are as high as the units (geometry; the same split as in BIA Technical
 * Note 10 and as in tables for concrete masonry).
 */
package org.coursewright.takeoff.quantities;
