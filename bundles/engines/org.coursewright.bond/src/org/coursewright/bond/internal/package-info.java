/**
 * How walls are laid: courses into runs ({@link org.coursewright.bond.internal.RunFinder}), runs into patterns
 * ({@link org.coursewright.bond.internal.PieceSets}, {@link org.coursewright.bond.internal.Sequencer}), one pattern for
 * every run ({@link org.coursewright.bond.internal.CostNetwork}). All lengths are {@code long} counts of 1/320 mm;
 * joints are exact fractions, scaled by their number.
 */
package org.coursewright.bond.internal;
