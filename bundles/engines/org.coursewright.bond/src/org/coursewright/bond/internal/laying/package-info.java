/** Lays one wall: chooses a pattern for every run, betters the choice, and tidies what comes of it. */
package org.coursewright.bond.internal.laying;
