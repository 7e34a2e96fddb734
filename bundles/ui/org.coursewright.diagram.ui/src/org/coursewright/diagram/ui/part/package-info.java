/** What edit parts have in common, with the unchecked lists of the graphical framework wrapped once. */
package org.coursewright.diagram.ui.part;
