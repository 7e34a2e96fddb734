/** The page that greets whoever has no project open, and the demo that it opens. */
package org.coursewright.workbench.internal.welcome;
