/**
 * Fits walls that have been laid to small changes of their dimensions, and remembers what their runs came to.
 *
 * <p>Only advice asks for it. It stands here all the same, since it is made of runs, patterns and laps, which only the inside of
 * the engine knows; advice chooses among what walls come to and knows none of these.
 */
package org.coursewright.bond.internal.refit;
