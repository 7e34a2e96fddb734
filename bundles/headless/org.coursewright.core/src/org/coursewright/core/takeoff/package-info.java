/**
 * What the building takes: {@link org.coursewright.core.takeoff.ProjectTakeoff} turns walls as laid into lines of units,
 * mortar, lintels and wall faces, each with how it came about. Speaks in records of its own; the engine stays behind it.
 */
package org.coursewright.core.takeoff;
