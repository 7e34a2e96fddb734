/** Wall, opening and unit schedules as CSV. */
package org.coursewright.exchange.schedule;
