/** What is said about a project without stopping anybody: recovered edits, what could not be kept, what was written. */
package org.coursewright.workbench.notice;
