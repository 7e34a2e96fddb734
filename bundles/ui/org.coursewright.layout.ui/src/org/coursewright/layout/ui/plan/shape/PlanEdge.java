package org.coursewright.layout.ui.plan.shape;

/**
 * A straight line from one point in plan to another.
 *
 * @param from one end
 * @param to the other end
 */
public record PlanEdge(PlanPoint from, PlanPoint to) {
}
