/**
 * How far a cost may reasonably be off: simulation of uncertain lines, correlated by source.
 *
 * <p>Start with {@link org.coursewright.takeoff.range.CostSimulation}: lines with a
 * {@link org.coursewright.takeoff.range.Spread} each in, a {@link org.coursewright.takeoff.range.CostRange} out. Same
 * input and seed, same result, on every machine. This is the place for floating point: results are statistics, to be read
 * to two or three digits.
 */
package org.coursewright.takeoff.range;
