package org.coursewright.layout.ui.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;

import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.layout.ui.part.OpeningGrip;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.trial.PlaceCuts;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.geometry.Rectangle;
import org.junit.jupiter.api.Test;

class StripScaleTest {

    /** Nine places a quarter of an inch apart on 90 pixels: ten for each. */
    private final StripScale scale = new StripScale(cuts(LongStream.rangeClosed(-4, 4).toArray()),
            new Rectangle(100, 10, 90, 50));

    private static PlaceCuts cuts(long... quarters) {
        List<ProfilePoint> points = LongStream.of(quarters).mapToObj(each -> new ProfilePoint(
                Length.ofInchFraction(each, 4), 0, 0, (int) (each + 4), 0, Basis.LAID)).toList();
        return new PlaceCuts(OpeningGrip.OPENING, new OpeningPlace(Length.ofInches(45), Length.ofInches(36)), points,
                false);
    }

    @Test
    void columnsFillTheAreaSideBySide() {
        List<Rectangle> columns = scale.cuts().points().stream().map(scale::column).toList();

        assertThat(columns).extracting(box -> box.x).containsExactly(100, 110, 120, 130, 140, 150, 160, 170, 180);
        assertThat(columns).allSatisfy(box -> assertThat(box.width).isEqualTo(8));
    }

    @Test
    void mostCutsAreAsHighAsTheAreaAndNoneIsALine() {
        assertThat(scale.height(8)).isEqualTo(50);
        assertThat(scale.height(0)).isEqualTo(1);
    }

    @Test
    void pointIsFoundAtItsColumn() {
        assertThat(scale.at(141)).get().extracting(ProfilePoint::change).isEqualTo(Length.ZERO);
        assertThat(scale.at(50)).isEmpty();
    }

    @Test
    void placesThatCannotBeLeaveAGap() {
        StripScale gap = new StripScale(cuts(-4, -3, 3, 4), new Rectangle(0, 0, 90, 50));

        assertThat(gap.at(45)).isEmpty();
        assertThat(gap.column(gap.cuts().points().get(2)).x).isEqualTo(70);
    }

    @Test
    void onePlaceAloneHasAColumn() {
        StripScale one = new StripScale(cuts(0), new Rectangle(0, 0, 90, 50));

        assertThat(one.at(45)).isPresent();
    }
}
