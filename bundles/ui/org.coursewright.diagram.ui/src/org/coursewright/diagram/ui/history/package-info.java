/** The one bridge between the graphical framework's commands and the history of a project. */
package org.coursewright.diagram.ui.history;
