/** Opening, saving, undoing and closing projects, and remembering which were open. */
package org.coursewright.workbench.internal.project;
