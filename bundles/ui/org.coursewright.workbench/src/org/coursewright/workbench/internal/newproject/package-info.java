/** Making a project of schedules. */
package org.coursewright.workbench.internal.newproject;
