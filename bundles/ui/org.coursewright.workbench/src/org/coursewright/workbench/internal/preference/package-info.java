/** What a person may choose for the workbench as a whole. */
package org.coursewright.workbench.internal.preference;
