/** The view of changes of dimension that are put before the architect. */
package org.coursewright.layout.ui.proposal;
