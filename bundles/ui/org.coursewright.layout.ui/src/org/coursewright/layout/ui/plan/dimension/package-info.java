/** Dimension strings of a plan: which there are, and what typing another length into one does. */
package org.coursewright.layout.ui.plan.dimension;
