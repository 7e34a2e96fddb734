/** Tools of the plan editor: drawing walls, placing openings. */
package org.coursewright.layout.ui.plan.tool;
