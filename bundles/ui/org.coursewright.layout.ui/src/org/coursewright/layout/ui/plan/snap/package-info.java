/** What the mouse is drawn to in a plan: places of whole units, other walls, round angles. */
package org.coursewright.layout.ui.plan.snap;
