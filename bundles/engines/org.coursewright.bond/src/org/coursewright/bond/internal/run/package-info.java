/**
 * The runs of a wall and what may lie in one: pieces, joints and what somebody decided about them. All lengths are
 * {@code long} counts of 1/320 mm; joints are exact fractions, scaled by their number.
 */
package org.coursewright.bond.internal.run;
