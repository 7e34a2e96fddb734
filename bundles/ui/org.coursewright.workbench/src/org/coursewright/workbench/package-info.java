/** The workbench window. */
package org.coursewright.workbench;
