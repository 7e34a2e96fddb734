/** Which pieces fill a level run, in what orders they can lie, and what lengths can be filled at all. */
package org.coursewright.bond.internal.pieces;
