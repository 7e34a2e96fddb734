/**
 * Changes of dimension that are put before the architect: kept in the project with what became of them, and made in it when
 * they are accepted.
 */
package org.coursewright.core.proposal;
