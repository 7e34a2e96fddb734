/** The application, its window, and what is in the window when it opens. */
package org.coursewright.workbench.internal.window;
