/** The view of all edits of the active project, from which any earlier or later state is one step away. */
package org.coursewright.workbench.internal.history;
