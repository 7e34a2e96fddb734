package org.coursewright.takeoff.quantities;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;

import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ten courses of ten units, measured piece by piece, against tables by area and by thousand units. */
class PublishedMortarTablesTest {

    private static final int UNITS = 10;
    private static final int COURSES = 10;

    /** Handbook of the trade, table of mortar volumes; metric rows computed there by formula, O011 to O015. */
    @ParameterizedTest
    @CsvSource({
            "290, 140, 90, 140, 10, 33.333, 0.546, 0.01820",
            "290, 140, 90, 290, 10, 66.667, 0.696, 0.04640",
            "290, 140, 100, 140, 10, 30.303, 0.560, 0.01697",
            "240, 240, 90, 240, 10, 40.000, 0.816, 0.03264"})
    void metricBlocksAgree(long length, long width, long height, long thickness, long joint, double unitsPerArea,
            double litresPerUnit, double volumePerArea) {
        UnitShape unit = new UnitShape("block", Length.ofMillimetres(length), Length.ofMillimetres(width),
                Length.ofMillimetres(height));
        WallQuantities measured = measure(unit, Length.ofMillimetres(thickness), Length.ofMillimetres(joint));
        Volume net = measured.mortar().net();
        Fraction area = area(measured.wall(), Length.ofMillimetres(1));
        assertThat(decimal(perUnit(net, UnitCode.LITRE))).isCloseTo(litresPerUnit, within(1e-6));
        assertThat(UNITS * COURSES * 1e6 / decimal(area)).isCloseTo(unitsPerArea, within(5e-4));
        assertThat(decimal(net.in(UnitCode.CUBIC_METRE).dividedBy(area)) * 1e6).isCloseTo(volumePerArea, within(5e-6));
    }

    /** The same table, inch rows, O016 to O018; sizes and joint in eighths of an inch. */
    @ParameterizedTest
    @CsvSource({
            "112, 80, 28, 80, 4, 2.48276, 0.052083, 0.129310",
            "112, 80, 28, 80, 3, 2.58513, 0.038791, 0.100281",
            "112, 80, 28, 112, 4, 3.42857, 0.056713, 0.194444",
            "112, 80, 32, 80, 6, 2.05531, 0.081380, 0.167261"})
    void inchBlocksAgree(long length, long width, long height, long thickness, long joint, double unitsPerArea,
            double volumePerUnit, double volumePerArea) {
        UnitShape unit = new UnitShape("block", eighths(length), eighths(width), eighths(height));
        WallQuantities measured = measure(unit, eighths(thickness), eighths(joint));
        Volume net = measured.mortar().net();
        Fraction area = area(measured.wall(), Length.ofInches(12));
        assertThat(decimal(perUnit(net, UnitCode.CUBIC_FOOT))).isCloseTo(volumePerUnit, within(1e-6));
        assertThat(UNITS * COURSES / decimal(area)).isCloseTo(unitsPerArea, within(1e-5));
        assertThat(decimal(net.in(UnitCode.CUBIC_FOOT).dividedBy(area))).isCloseTo(volumePerArea, within(1e-6));
    }

    /**
     * BIA Technical Note 10, Table 4, values from memory (O042 to O046): nominal height and length in sixtieths of an
     * inch with the 4 in nominal thickness; units for 100 ft²; mortar for 1,000 units with 3/8 in and 1/2 in joints.
     * Specified size is nominal size less one joint.
     */
    @ParameterizedTest
    @CsvSource({
            "modular, 160, 480, 675, 8.1, 10.3",
            "engineer modular, 192, 480, 563, 8.6, 10.9",
            "economy, 240, 480, 450, 9.2, 11.7",
            "roman, 120, 720, 600, 10.8, 13.7",
            "norman, 160, 720, 450, 11.3, 14.4",
            "norwegian, 192, 720, 375, 11.7, 14.9",
            "utility, 240, 720, 300, 12.3, 15.7"})
    void brickAgreesWithTechnicalNoteTen(String name, long height, long length, long unitsPerHundred, double thin,
            double thick) {
        for (int eighths = 3; eighths <= 4; eighths++) {
            WallQuantities measured = brick(name, height, length, eighths);
            double area = decimal(area(measured.wall(), Length.ofInches(120)));
            assertThat(Math.round(UNITS * COURSES / area)).isEqualTo(unitsPerHundred);
            double perThousand = 1000 * decimal(perUnit(measured.mortar().net(), UnitCode.CUBIC_FOOT));
            assertThat(perThousand).isCloseTo(eighths == 3 ? thin : thick, within(0.1));
        }
    }

    /** Technical Note 10, mortar for 100 ft² of modular brick and of utility brick, from memory, O045. */
    @ParameterizedTest
    @CsvSource({"160, 480, 5.5, 7.0", "240, 720, 3.7, 4.7"})
    void brickMortarByAreaAgreesWithTechnicalNoteTen(long height, long length, double thin, double thick) {
        for (int eighths = 3; eighths <= 4; eighths++) {
            WallQuantities measured = brick("brick", height, length, eighths);
            double area = decimal(area(measured.wall(), Length.ofInches(120)));
            assertThat(decimal(measured.mortar().net().in(UnitCode.CUBIC_FOOT)) / area).isCloseTo(eighths == 3
                    ? thin
                    : thick, within(0.1));
        }
    }

    /** O048: 7 5/8 by 2 1/4 in with 3/8 in joints both ways is 6.857 bricks a square foot, not the modular 6.75. */
    @Test
    void brickThatIsNotModularIsCountedByItsOwnSize() {
        UnitShape brick = new UnitShape("brick", eighths(61), eighths(29), eighths(18));
        WallQuantities measured = measure(brick, eighths(29), eighths(3));
        double area = decimal(area(measured.wall(), Length.ofInches(12)));
        assertThat(UNITS * COURSES / area).isCloseTo(6.8571, within(1e-4));
    }

    /** O034 and O035: 8 × 8 × 16 in concrete units are 1.125 a square foot, and 180 for a wall of 20 by 8 ft. */
    @Test
    void concreteUnitsAgreeWithPublishedCounts() {
        UnitShape unit = new UnitShape("CMU", eighths(125), eighths(61), eighths(61));
        LaidWall wall = Walls.modular(unit, unit.length(), unit.width(), eighths(3), eighths(3), 15, 12);
        WallQuantities measured = new WallTakeoff(JointFill.FULL).measure(wall);
        assertThat(wall.courses().get(0).runs().get(0).length()).isEqualTo(Length.ofInches(240));
        assertThat(measured.pieces().whole()).isEqualTo(180);
        assertThat(area(wall, Length.ofInches(12)).dividedBy(Fraction.of(180))).isEqualTo(Fraction.of(1000, 1125));
    }

    /** O036: a plan of 20 by 8 ft, 8 ft high, by the rule that does not correct corners: 42 units a course, 504 in all. */
    @Test
    void concreteUnitsOfABuildingAgreeWithThePublishedRule() {
        UnitShape unit = new UnitShape("CMU", eighths(125), eighths(61), eighths(61));
        WallTakeoff takeoff = new WallTakeoff(JointFill.FULL);
        long units = 0;
        for (int unitsLong : new int[]{15, 6, 15, 6}) {
            LaidWall wall = Walls.modular(unit, unit.length(), unit.width(), eighths(3), eighths(3), unitsLong, 12);
            units += takeoff.measure(wall).pieces().total();
        }
        assertThat(units).isEqualTo(504);
    }

    private static WallQuantities brick(String name, long sixtiethsHigh, long sixtiethsLong, long eighthsJoint) {
        Length joint = eighths(eighthsJoint);
        // 2 2/3 in and 3 1/5 in are no whole number of 1/320 mm: heights are rounded down, by less than 1/320 mm
        Length height = Length.ofUnits(sixtiethsHigh * Length.UNITS_PER_INCH / 60).minus(joint);
        Length length = Length.ofUnits(sixtiethsLong * Length.UNITS_PER_INCH / 60).minus(joint);
        UnitShape unit = new UnitShape(name, length, Length.ofInches(4).minus(joint), height);
        return measure(unit, unit.width(), joint);
    }

    private static WallQuantities measure(UnitShape unit, Length thickness, Length joint) {
        Length face = thickness.equals(unit.width()) ? unit.length() : unit.width();
        return new WallTakeoff(JointFill.FULL).measure(Walls.modular(unit, face, thickness, joint, joint, UNITS,
                COURSES));
    }

    private static Fraction perUnit(Volume volume, UnitCode unit) {
        return volume.in(unit).dividedBy(Fraction.of((long) UNITS * COURSES));
    }

    /** Area of the face in squares of that edge. */
    private static Fraction area(LaidWall wall, Length edge) {
        Length length = wall.courses().get(0).runs().get(0).length();
        Length height = wall.courses().stream().map(course -> course.height().plus(course.bedJoint())).reduce(
                Length.ZERO, Length::plus);
        return Fraction.of(length.units(), edge.units()).times(Fraction.of(height.units(), edge.units()));
    }

    private static Length eighths(long count) {
        return Length.ofInchFraction(count, 8);
    }

    private static double decimal(Fraction fraction) {
        return new BigDecimal(fraction.numerator()).divide(new BigDecimal(fraction.denominator()),
                java.math.MathContext.DECIMAL64).doubleValue();
    }
}
