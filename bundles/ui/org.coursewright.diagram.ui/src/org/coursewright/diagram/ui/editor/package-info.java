/** What graphical editors of a project have in common. */
package org.coursewright.diagram.ui.editor;
