/**
 * Hours of crews and plant from quantities: output, learning, height and other conditions.
 *
 * <p>Start with {@link org.coursewright.takeoff.labour.LabourTask} and
 * {@link org.coursewright.takeoff.labour.PlantTask}. Hours are exact, but for the learning curve, whose powers are
 * irrational: its factor is rounded to nine decimals.
 */
package org.coursewright.takeoff.labour;
