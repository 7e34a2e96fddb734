/** Finds out why pieces of a wall that has been laid are cut. */
package org.coursewright.bond.internal.reason;
