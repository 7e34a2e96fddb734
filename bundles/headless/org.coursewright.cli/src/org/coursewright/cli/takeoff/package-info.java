/** Commands about what a building takes. */
package org.coursewright.cli.takeoff;
