package org.coursewright.layout.ui.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

class PlaceCutsTest {

    private static final Length PLANNED = Length.ofInches(45);

    private static ProfilePoint point(long inches, int laps, int cuts, Basis basis) {
        return new ProfilePoint(Length.ofInches(inches), 0, laps, cuts, 0, basis);
    }

    private static PlaceCuts cuts(ProfilePoint... points) {
        return new PlaceCuts(PLANNED, List.of(points), false);
    }

    @Test
    void boundIsNoPlaceWithTheFewestCuts() {
        PlaceCuts cuts = cuts(point(-1, 0, 0, Basis.BOUND), point(0, 0, 6, Basis.LAID), point(1, 0, 4, Basis.LAID));

        assertThat(cuts.best()).extracting(ProfilePoint::change).containsExactly(Length.ofInches(1));
    }

    @Test
    void shortLapCountsForMoreThanCuts() {
        PlaceCuts cuts = cuts(point(0, 0, 6, Basis.LAID), point(1, 1, 0, Basis.LAID));

        assertThat(cuts.best()).extracting(ProfilePoint::cutPieces).containsExactly(6);
    }

    @Test
    void nearestOfSeveralPlacesDraws() {
        PlaceCuts cuts = cuts(point(-1, 0, 0, Basis.LAID), point(0, 0, 6, Basis.LAID), point(1, 0, 0, Basis.LAID));

        assertThat(cuts.attracting(Length.ofInchFraction(363, 8), Length.ofInches(1))).contains(Length.ofInches(46));
    }

    @Test
    void placeThatIsFarDoesNotDraw() {
        PlaceCuts cuts = cuts(point(0, 0, 0, Basis.LAID), point(4, 0, 6, Basis.LAID));

        assertThat(cuts.attracting(Length.ofInches(49), Length.ofInches(1))).isEmpty();
        assertThat(cuts().attracting(PLANNED, Length.ofInches(1))).isEmpty();
    }

    @Test
    void placeIsFoundByItsOffset() {
        assertThat(cuts(point(2, 0, 3, Basis.LAID)).at(Length.ofInches(47))).isPresent();
        assertThat(cuts(point(2, 0, 3, Basis.LAID)).at(PLANNED)).isEmpty();
    }
}
