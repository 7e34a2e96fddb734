/** Edit parts of a plan: the storey, its walls, openings and dimension strings. */
package org.coursewright.layout.ui.plan.part;
