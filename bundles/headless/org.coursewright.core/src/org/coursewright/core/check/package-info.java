/** What is wrong or doubtful in a project, element by element. */
package org.coursewright.core.check;
