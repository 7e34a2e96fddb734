/** Lays the walls of a building and chooses which of them run through where they meet. */
package org.coursewright.bond.internal.building;
