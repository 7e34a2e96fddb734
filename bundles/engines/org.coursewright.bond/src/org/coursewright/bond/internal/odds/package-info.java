/** The distribution by which it is told how likely joints laid by hand add up to what a run leaves for them. */
package org.coursewright.bond.internal.odds;
