/**
 * Lays walls: which pieces fill every course of every wall so that all joints stay in range, head joints lap, and few
 * pieces are cut.
 *
 * <p>Start with {@link org.coursewright.bond.BondSolver}: a {@link org.coursewright.bond.BondRequest} in, a
 * {@link org.coursewright.bond.BondResult} out. Same request, same result; safe for use from any thread. Positions run
 * along a wall from its outer start face, heights from its base.
 */
package org.coursewright.bond;
