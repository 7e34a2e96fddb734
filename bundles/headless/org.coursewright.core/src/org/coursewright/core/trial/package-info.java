/** What if: layouts of a project with something changed, while the project itself stays as it is. */
package org.coursewright.core.trial;
