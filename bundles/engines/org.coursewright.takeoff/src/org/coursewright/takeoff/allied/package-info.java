/**
 * What walls take besides units and mortar: bond beams and their steel, lintels, ties, coatings, plaster and scaffold.
 *
 * <p>Each record describes one piece of work from lengths that the layout knows, and gives its
 * {@link org.coursewright.takeoff.Figure}s. Quantities only: what is strong enough is for the local code and a licensed
 * designer to say. Areas are exact, in square metres.
 */
package org.coursewright.takeoff.allied;
