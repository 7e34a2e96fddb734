/** Divides a height into whole courses so that marks fall on course lines. */
package org.coursewright.bond.internal.coursing;
