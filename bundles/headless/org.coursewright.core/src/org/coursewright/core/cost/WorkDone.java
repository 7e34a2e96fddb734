package org.coursewright.core.cost;

import org.coursewright.takeoff.labour.WorkPortion;

/**
 * A portion of work, and the element it is charged to.
 *
 * @param element ASTM E1557 code
 * @param portion what is worked on, how high, how much
 */
record WorkDone(String element, WorkPortion portion) {
    // a pair that every kind of work is made of
}
