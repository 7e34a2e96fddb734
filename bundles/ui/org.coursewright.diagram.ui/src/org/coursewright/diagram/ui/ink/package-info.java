/** Colours that diagrams are drawn in, on light and on dark paper. */
package org.coursewright.diagram.ui.ink;
