/** Random numbers and distributions; results are the same on every machine, as {@link java.lang.StrictMath} is used. */
package org.coursewright.takeoff.range.internal;
