package org.coursewright.core.geometry;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.measure.Length;

/** Centre lines written down in inches. */
final class Plan {

    private final List<CentreLine> walls = new ArrayList<>();

    Plan wall(String mark, long fromX, long fromY, long toX, long toY, long thickness) {
        walls.add(new CentreLine(mark, Length.ofInches(fromX), Length.ofInches(fromY), Length.ofInches(toX),
                Length.ofInches(toY), Length.ofInches(thickness)));
        return this;
    }

    List<CentreLine> walls() {
        return walls;
    }

    WallNetwork network() {
        return WallNetwork.of(walls);
    }
}
