/** What model elements look like in every view: icon and text. */
package org.coursewright.workbench.internal.element;
