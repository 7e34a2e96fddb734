/** What was found in a project, as markers on a resource that stands for its file. */
package org.coursewright.workbench.internal.marker;
