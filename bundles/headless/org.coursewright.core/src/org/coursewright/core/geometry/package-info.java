/**
 * Where walls meet, and how long they are from face to face.
 *
 * <p>Start with {@link org.coursewright.core.geometry.WallNetwork}: it takes the centre lines of the walls of one storey
 * and tells which ends meet what, which ends nearly do, which walls cross, and how far each face runs. It knows nothing
 * of the project model. All arithmetic is on whole units of 1/320 mm, in {@link java.math.BigInteger} where a product of
 * two lengths does not fit a {@code long}; what is irrational (the length of a slanted wall) is rounded once, to the
 * nearest unit.
 */
package org.coursewright.core.geometry;
