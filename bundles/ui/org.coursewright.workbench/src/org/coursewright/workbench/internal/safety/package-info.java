/** Keeps work from being lost: what was recovered, what cannot be kept, and saving by itself. */
package org.coursewright.workbench.internal.safety;
