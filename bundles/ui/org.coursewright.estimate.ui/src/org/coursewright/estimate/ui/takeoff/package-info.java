/** The table of everything that the building takes. */
package org.coursewright.estimate.ui.takeoff;
