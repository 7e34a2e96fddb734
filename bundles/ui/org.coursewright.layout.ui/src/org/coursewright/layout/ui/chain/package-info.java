/** Walls round corners, unfolded beside the wall that is shown. */
package org.coursewright.layout.ui.chain;
