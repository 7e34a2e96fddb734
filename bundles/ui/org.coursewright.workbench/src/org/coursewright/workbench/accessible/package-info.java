/** What those are told who hear the screen. */
package org.coursewright.workbench.accessible;
