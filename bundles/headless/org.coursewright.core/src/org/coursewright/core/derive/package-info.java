/** Results that follow from a project, recomputed only where a change reaches. */
package org.coursewright.core.derive;
