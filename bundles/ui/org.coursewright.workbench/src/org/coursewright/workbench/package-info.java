/**
 * What other workbench plug-ins build on: the ids of the window's parts and the projects that are open.
 * <p>
 * The workbench shows and asks; it computes nothing. Every edit runs as a command on the session of its project, so
 * that all parts share one undo history.
 */
package org.coursewright.workbench;
