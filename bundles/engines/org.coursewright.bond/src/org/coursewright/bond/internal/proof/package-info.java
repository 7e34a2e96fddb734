/** Proves how many cuts every layout of a wall needs that keeps its laps. */
package org.coursewright.bond.internal.proof;
