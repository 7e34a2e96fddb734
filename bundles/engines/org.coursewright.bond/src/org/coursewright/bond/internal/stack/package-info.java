/** The runs of a wall one over the other, the patterns considered for them, and whether two of them fit. */
package org.coursewright.bond.internal.stack;
