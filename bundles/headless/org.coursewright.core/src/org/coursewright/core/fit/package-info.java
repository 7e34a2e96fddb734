/**
 * Which small changes of a project's dimensions spare cuts, and how to make them.
 *
 * <p>Start with {@link org.coursewright.core.fit.ProjectFit}.
 */
package org.coursewright.core.fit;
