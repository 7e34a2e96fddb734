/** The values of the selected element, read and edited in fields of the right kind. */
package org.coursewright.workbench.internal.properties;
