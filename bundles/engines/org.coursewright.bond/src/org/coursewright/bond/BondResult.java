package org.coursewright.bond;

import java.util.List;
import java.util.Map;

/**
 * How the walls of a request are laid.
 *
 * @param walls in the order of the request
 * @param throughOnOdd by meeting id the mark of the wall that runs through in odd courses
 */
public record BondResult(List<WallLayout> walls, Map<String, String> throughOnOdd) {

    public BondResult {
        walls = List.copyOf(walls);
        throughOnOdd = Map.copyOf(throughOnOdd);
    }
}
