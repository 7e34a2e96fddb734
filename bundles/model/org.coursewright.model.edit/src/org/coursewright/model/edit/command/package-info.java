/** Every edit of a project as an undoable command, one class for each intention. */
package org.coursewright.model.edit.command;
