/**
 * What the bond engine is measured against: its definitions told a second time, without a line of the engine's own
 * code. {@link org.coursewright.benchmarks.oracle.LayoutVerifier} recomputes a layout,
 * {@link org.coursewright.benchmarks.oracle.GeneralModel} finds the best one with a general-purpose constraint solver.
 */
package org.coursewright.benchmarks.oracle;
