/** The outline of what the active editor shows. */
package org.coursewright.workbench.internal.outline;
