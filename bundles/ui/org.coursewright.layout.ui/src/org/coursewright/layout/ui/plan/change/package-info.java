/** What becomes of a plan when something in it is moved, as edits of the project. */
package org.coursewright.layout.ui.plan.change;
