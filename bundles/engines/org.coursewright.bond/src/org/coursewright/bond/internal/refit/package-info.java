/** Fits walls that have been laid to small changes of their dimensions, and remembers what their runs came to. */
package org.coursewright.bond.internal.refit;
