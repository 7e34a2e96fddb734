/** Which wall runs through at a corner: shown, and decided by menu and keyboard. */
package org.coursewright.layout.ui.handing;
