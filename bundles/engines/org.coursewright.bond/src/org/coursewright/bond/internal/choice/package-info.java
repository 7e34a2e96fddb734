/**
 * Least sums of costs over choices that go together or exclude one another, found by elimination. Nothing here
 * knows of walls.
 */
package org.coursewright.bond.internal.choice;
