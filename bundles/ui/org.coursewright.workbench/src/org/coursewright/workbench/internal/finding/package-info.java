/** What is wrong or doubtful in the open projects, as a table that leads to the elements. */
package org.coursewright.workbench.internal.finding;
