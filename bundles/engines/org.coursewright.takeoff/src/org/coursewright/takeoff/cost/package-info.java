/**
 * What a building costs: resources times rates, by element and by trade, for several scenarios side by side.
 *
 * <p>Start with {@link org.coursewright.takeoff.cost.CostScenario#price()}. The order of the build-up is that of
 * {@link org.coursewright.takeoff.cost.MarkUp}. Money is exact from the priced quantity on, nothing is rounded on the way,
 * so that parts add up to the whole whichever way they are grouped. What cannot be priced is a
 * {@link org.coursewright.takeoff.cost.PricingProblem} on its line, never left out in silence.
 */
package org.coursewright.takeoff.cost;
