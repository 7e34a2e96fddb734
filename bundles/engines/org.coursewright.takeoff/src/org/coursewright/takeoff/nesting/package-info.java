/**
 * Cutting pieces out of whole units with as few units as possible, and whether pressing a special pays instead.
 *
 * <p>Start with {@link org.coursewright.takeoff.nesting.CutPlanner}: a
 * {@link org.coursewright.takeoff.nesting.CutStock} and the pieces in, a
 * {@link org.coursewright.takeoff.nesting.CutPlan} out. This is the cutting-stock problem in one dimension, with the saw's
 * kerf. Lower bounds come from the relaxation of P. C. Gilmore and R. E. Gomory, "A linear programming approach to the
 * cutting-stock problem", Operations Research 9 (1961); they are checked in integers, so that a plan said to be proven is
 * so whatever floating point did on the way.
 */
package org.coursewright.takeoff.nesting;
