/** The walls and openings of a storey as they lie in plan. Plain values, without a window. */
package org.coursewright.layout.ui.plan.shape;
