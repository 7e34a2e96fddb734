/**
 * What an estimate rests on, as tables that people type: materials, mixes, crews, plant, work, rates, beams, finishes,
 * settings and scenarios. {@link org.coursewright.exchange.estimate.EstimateFolder} reads a folder of them into a project,
 * {@link org.coursewright.exchange.estimate.RateFile} a price list.
 */
package org.coursewright.exchange.estimate;
