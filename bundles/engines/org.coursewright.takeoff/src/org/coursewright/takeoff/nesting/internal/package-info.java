/** How cut plans are found: relaxation by column generation, rounding, and branch and bound where that leaves a gap. */
package org.coursewright.takeoff.nesting.internal;
