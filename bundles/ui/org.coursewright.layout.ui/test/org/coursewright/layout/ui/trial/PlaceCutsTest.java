package org.coursewright.layout.ui.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;

import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.layout.ui.part.OpeningGrip;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

class PlaceCutsTest {

    private static final OpeningPlace PLANNED = at(45);

    private static ProfilePoint point(long inches, int laps, int cuts, Basis basis) {
        return new ProfilePoint(Length.ofInches(inches), 0, laps, cuts, 0, basis);
    }

    private static PlaceCuts cuts(ProfilePoint... points) {
        return new PlaceCuts(OpeningGrip.OPENING, PLANNED, List.of(points), false);
    }

    private static OpeningPlace at(long inches) {
        return at(Length.ofInches(inches));
    }

    private static OpeningPlace at(Length offset) {
        return new OpeningPlace(offset, Length.ofInches(36));
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

        assertThat(cuts.attracting(at(Length.ofInchFraction(363, 8)), Length.ofInches(1))).contains(at(46));
    }

    @Test
    void placeThatIsFarDoesNotDraw() {
        PlaceCuts cuts = cuts(point(0, 0, 0, Basis.LAID), point(4, 0, 6, Basis.LAID));

        assertThat(cuts.attracting(at(49), Length.ofInches(1))).isEmpty();
        assertThat(cuts().attracting(PLANNED, Length.ofInches(1))).isEmpty();
    }

    @Test
    void placeIsFoundByItsOffset() {
        assertThat(cuts(point(2, 0, 3, Basis.LAID)).at(at(47))).isPresent();
        assertThat(cuts(point(2, 0, 3, Basis.LAID)).at(PLANNED)).isEmpty();
    }

    @Test
    void nearJambIsDrawnByItsPlaceAndTheFarOneStays() {
        PlaceCuts cuts = new PlaceCuts(OpeningGrip.NEAR_JAMB, PLANNED, List.of(point(0, 0, 6, Basis.LAID),
                point(2, 0, 1, Basis.LAID)), false);
        OpeningPlace wanted = new OpeningPlace(Length.ofInches(46), Length.ofInches(35));

        assertThat(cuts.attracting(wanted, Length.ofInches(1)))
                .contains(new OpeningPlace(Length.ofInches(47), Length.ofInches(34)));
    }

    @Test
    void farJambIsDrawnByItsPlaceAndTheNearOneStays() {
        PlaceCuts cuts = new PlaceCuts(OpeningGrip.FAR_JAMB, PLANNED, List.of(point(0, 0, 6, Basis.LAID),
                point(2, 0, 1, Basis.LAID)), false);
        OpeningPlace wanted = new OpeningPlace(Length.ofInches(45), Length.ofInches(37));

        assertThat(cuts.attracting(wanted, Length.ofInches(1)))
                .contains(new OpeningPlace(Length.ofInches(45), Length.ofInches(38)));
        assertThat(cuts.attracting(PLANNED, Length.ofInches(1))).isEmpty();
    }

    @Test
    void whatWasLaidAtLeisureCountsIfItTakesLess() {
        PlaceCuts cuts = cuts(point(0, 2, 6, Basis.LAID), point(1, 0, 4, Basis.BOUND), point(2, 0, 1, Basis.LAID));
        Map<OpeningPlace, WallLayout> laid = Map.of(at(45), layout(5), at(46), layout(9), at(47), layout(3));

        assertThat(cuts.improvedBy(laid).points()).containsExactly(point(0, 0, 5, Basis.LAID),
                point(1, 0, 9, Basis.LAID), point(2, 0, 1, Basis.LAID));
    }

    private static WallLayout layout(int cuts) {
        return new WallLayout("W1", List.of(), cuts, List.of(), 0, List.of(), false, 0);
    }
}
