/** Edit parts of a wall face: the wall, painted by one figure, and its openings, which can be dragged. */
package org.coursewright.layout.ui.part;
