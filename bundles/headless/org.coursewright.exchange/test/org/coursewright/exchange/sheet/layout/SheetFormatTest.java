package org.coursewright.exchange.sheet.layout;

import static org.assertj.core.api.Assertions.assertThat;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;
import org.junit.jupiter.api.Test;

class SheetFormatTest {

    @Test
    void inchesAreWrittenToSixteenths() {
        SheetFormat format = new SheetFormat(DisplayUnit.INCH);
        assertThat(format.mark(Length.ofInchFraction(1233, 16))).isEqualTo("6'-5 1/16\"");
        assertThat(format.joint(new LengthRatio(Length.ofInches(14), 25))).isEqualTo("9/16\"");
    }

    @Test
    void lengthsThatReadAlikeAreShownAlike() {
        SheetFormat format = new SheetFormat(DisplayUnit.INCH);
        assertThat(format.shown(Length.ofInches(3).plus(Length.ofUnits(1)))).isEqualTo(Length.ofInches(3));
        assertThat(new SheetFormat(DisplayUnit.MILLIMETRE).shown(Length.ofUnits(31))).isEqualTo(Length.ofUnits(32));
    }

    @Test
    void millimetresAreWholeOnMarksAndTenthsInJoints() {
        SheetFormat format = new SheetFormat(DisplayUnit.MILLIMETRE);
        assertThat(format.mark(Length.ofInchFraction(9, 2))).isEqualTo("114");
        assertThat(format.length(Length.ofInchFraction(9, 2))).isEqualTo("114.3");
        assertThat(format.joint(new LengthRatio(Length.ofMillimetres(100), 7))).isEqualTo("14.3");
    }
}
