/**
 * What laid walls take and what they cost, from the blocks up.
 *
 * <p>This package holds what all parts share: exact {@link org.coursewright.takeoff.Fraction}s and
 * {@link org.coursewright.takeoff.Volume}s, and {@link org.coursewright.takeoff.Figure}, a result that can show how it
 * came about. The parts are packages of their own, each with its entry named in its description:
 * {@code quantities} (pieces and mortar of laid walls), {@code allied} (what walls take besides),
 * {@code nesting} (cutting pieces out of units, making specials),
 * {@code mix} (mortar, concrete and soil, batch cards), {@code labour} (hours of crews and plant), {@code cost} (prices by
 * element and trade, scenarios), {@code range} (how far a cost may be off).
 * Everything is immutable, deterministic and safe for use from any thread.
 */
package org.coursewright.takeoff;
