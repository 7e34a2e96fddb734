package org.coursewright.layout.ui.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.coursewright.measure.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class OpeningGripTest {

    private static final OpeningPlace PLACE = new OpeningPlace(Length.ofInches(45), Length.ofInches(36));

    @ParameterizedTest
    @CsvSource({"OPENING, 47, 36, 47", "NEAR_JAMB, 47, 34, 34", "FAR_JAMB, 45, 38, 38"})
    void movedByTwoInches(OpeningGrip grip, long offset, long width, long dimension) {
        OpeningPlace moved = grip.moved(PLACE, Length.ofInches(2));

        assertThat(moved).isEqualTo(new OpeningPlace(Length.ofInches(offset), Length.ofInches(width)));
        assertThat(grip.dimension(moved)).isEqualTo(Length.ofInches(dimension));
    }

    @ParameterizedTest
    @EnumSource
    void distanceIsWhatItWasMovedBy(OpeningGrip grip) {
        Length by = Length.ofInches(-3);

        assertThat(grip.between(PLACE, grip.moved(PLACE, by))).isEqualTo(by);
    }
}
