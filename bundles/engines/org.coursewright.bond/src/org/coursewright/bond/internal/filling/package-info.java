/** Fills one run, piece after piece: with the fewest cuts, and with joints clear of those of its neighbours. */
package org.coursewright.bond.internal.filling;
