/**
 * How walls are laid, in packages each of which uses only those named before it: {@code choice} finds least sums,
 * {@code handing} says which wall runs through where, {@code run} what a run is and what lies in it, {@code lap} where
 * joints come too near, {@code pieces} which pieces fill a run, {@code filling} in what order; {@code stack} holds the
 * runs of a wall, {@code proof} bounds its cuts, {@code laying} lays it, {@code building} all walls of a building;
 * {@code refit} fits them to changes, {@code reason} says why pieces are cut. {@code coursing} and {@code odds} stand
 * alone.
 */
package org.coursewright.bond.internal;
