package org.coursewright.bond;

import java.util.List;

/**
 * Walls to lay and where they meet.
 *
 * @param walls the walls, marks unique, not null
 * @param meetings where ends of these walls meet other walls, ids unique, not null
 */
public record BondRequest(List<WallFace> walls, List<Meeting> meetings) {

    public BondRequest {
        walls = List.copyOf(walls);
        meetings = List.copyOf(meetings);
    }
}
