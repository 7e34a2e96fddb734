/**
 * Writing files from the window: the same headless commands as on the command line, run in the background on a copy of the
 * project as it is on the screen.
 */
package org.coursewright.workbench.internal.export;
