/**
 * Makes a project of an architect's schedules: walls, openings and units as tables.
 *
 * <p>Start with {@link org.coursewright.exchange.schedule.ScheduleImport}. Everything that is wrong with the tables is
 * told in one go, and a project comes out only if nothing is.
 */
package org.coursewright.exchange.schedule;
