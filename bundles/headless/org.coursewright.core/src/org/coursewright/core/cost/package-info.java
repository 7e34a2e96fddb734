/**
 * What the building costs: {@link org.coursewright.core.cost.PriceResults} turns quantities of a
 * {@link org.coursewright.core.takeoff.Measurement} into resources, prices them, and lays and prices scenarios. Speaks in
 * records of its own; the engine stays behind it.
 */
package org.coursewright.core.cost;
