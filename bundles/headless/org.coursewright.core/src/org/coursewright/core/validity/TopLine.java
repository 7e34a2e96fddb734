package org.coursewright.core.validity;

import org.coursewright.measure.Length;

/** The top of a wall, as openings under it see it. */
@FunctionalInterface
public interface TopLine {

    /**
     * @param from offset from the wall's outer start face, within the wall
     * @param to offset of a place farther on, within the wall
     * @return the height above the base that the top nowhere falls below between them, rounded down
     */
    Length lowestBetween(Length from, Length to);
}
