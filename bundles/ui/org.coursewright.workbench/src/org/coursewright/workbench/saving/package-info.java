/** How parts that show a project share its unsaved state. */
package org.coursewright.workbench.saving;
