package org.coursewright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Outside checks: sums of units and joints, written as feet and inches, are what published coursing tables say. */
class ModularTablesTest {

    private static final LengthFormat FORMAT = LengthFormat.INCHES;
    private static final Length JOINT = FORMAT.parse("3/8 in");
    private static final Length BLOCK_LENGTH = FORMAT.parse("15 5/8 in");
    private static final Length BLOCK_HEIGHT = FORMAT.parse("7 5/8 in");

    /**
     * Source: Brick Institute of America, Technical Note 10B (June 1993), Table 3, Vertical Coursing: rows in which every
     * column is a whole number of inches or the column is left empty here.
     */
    @ParameterizedTest(name = "[{index}] {0} courses")
    @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
            # courses | 2C = 4 in | 3C = 8 in | 5C = 16 in | 1C = 4 in
            1   | 0'-2"  |        |        | 0'-4"
            3   | 0'-6"  | 0'-8"  |        | 1'-0"
            5   | 0'-10" |        | 1'-4"  | 1'-8"
            6   | 1'-0"  | 1'-4"  |        | 2'-0"
            9   | 1'-6"  | 2'-0"  |        | 3'-0"
            10  | 1'-8"  |        | 2'-8"  | 3'-4"
            12  | 2'-0"  | 2'-8"  |        | 4'-0"
            15  | 2'-6"  | 3'-4"  | 4'-0"  | 5'-0"
            24  | 4'-0"  | 5'-4"  |        | 8'-0"
            25  | 4'-2"  |        | 6'-8"  | 8'-4"
            30  | 5'-0"  | 6'-8"  | 8'-0"  | 10'-0"
            45  | 7'-6"  | 10'-0" | 12'-0" | 15'-0"
            48  | 8'-0"  | 10'-8" |        | 16'-0"
            50  | 8'-4"  |        | 13'-4" | 16'-8"
            100 | 16'-8" |        | 26'-8" | 33'-4"
            """)
    void brickCoursesAreAsHighAsTheTableSays(int courses, String twoInFour, String threeInEight, String fiveInSixteen,
            String oneInFour) {
        assertCoursing(courses, 2, 4, twoInFour);
        assertCoursing(courses, 3, 8, threeInEight);
        assertCoursing(courses, 5, 16, fiveInSixteen);
        assertCoursing(courses, 1, 4, oneInFour);
    }

    /**
     * Three courses of modular brick and their joints are 8 in, so a joint is 5/12 in though the brick's specified height
     * is 2 1/4 in. Source: Brick Industry Association, Technical Note 10 (from memory).
     */
    @Test
    void theBedJointOfModularBrickIsFiveTwelfthsOfAnInch() {
        LengthRatio joint = new LengthRatio(FORMAT.parse("8 in").minus(FORMAT.parse("2 1/4 in").times(3)), 3);
        assertThat(joint).isEqualByComparingTo(new LengthRatio(FORMAT.parse("5 in"), 12));
    }

    /**
     * Concrete block 15 5/8 in long with 3/8 in joints: n stretchers take n times 16 in. Source: U.S. Navy, Builder
     * training manual, table of nominal lengths of concrete masonry walls by stretchers (from memory).
     */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '\u0001', textBlock = """
            1, 1'-4"
            2, 2'-8"
            5, 6'-8"
            10, 13'-4"
            15, 20'-0"
            """)
    void stretchersOfBlockAreAsLongAsTheTableSays(int stretchers, String nominal) {
        assertThat(FORMAT.formatExact(BLOCK_LENGTH.plus(JOINT).times(stretchers))).isEqualTo(nominal);
    }

    /** A half block is 7 5/8 in, so one and a half stretchers take 2 ft. Source: same table (from memory). */
    @Test
    void oneAndAHalfStretchersAreTwoFeet() {
        Length half = FORMAT.parse("7 5/8 in");
        assertThat(BLOCK_LENGTH.plus(JOINT).plus(half).plus(JOINT)).isEqualTo(FORMAT.parse("2'-0\""));
    }

    /**
     * A wall between two open ends has a joint less: five stretchers are 79 5/8 in. Source: same manual, actual length is
     * nominal length less 3/8 in.
     */
    @Test
    void aWallOfFiveStretchersIsAJointShorterThanNominal() {
        Length actual = BLOCK_LENGTH.times(5).plus(JOINT.times(4));
        assertThat(FORMAT.formatExact(actual)).isEqualTo("6'-7 5/8\"");
        assertThat(actual).isEqualTo(FORMAT.parse("79.625 in"));
    }

    /** Source: same manual, table of nominal heights of concrete masonry walls by courses (from memory). */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '\u0001', textBlock = """
            1, 8"
            2, 1'-4"
            3, 2'-0"
            5, 3'-4"
            10, 6'-8"
            12, 8'-0"
            15, 10'-0"
            """)
    void coursesOfBlockAreAsHighAsTheTableSays(int courses, String nominal) {
        assertThat(FORMAT.formatExact(BLOCK_HEIGHT.plus(JOINT).times(courses))).isEqualTo(nominal);
    }

    /**
     * Metric coordination: 57 mm brick comes three courses to 200 mm, 76 mm brick with 10 mm joints 86 mm a course
     * (from memory).
     */
    @Test
    void metricCoursesAddUp() {
        assertThat(new LengthRatio(FORMAT.parse("200 mm").minus(FORMAT.parse("57 mm").times(3)), 3)
                .isWithin(FORMAT.parse("9.6 mm"), FORMAT.parse("9.7 mm"))).isTrue();
        assertThat(FORMAT.parse("76 mm").plus(FORMAT.parse("10 mm")).times(7)).isEqualTo(FORMAT.parse("0.602 m"));
    }

    private static void assertCoursing(int courses, int perModule, int moduleInches, String published) {
        if (published != null) {
            Length modules = Length.ofInches((long) moduleInches * courses);
            assertThat(new LengthRatio(modules, perModule))
                    .isEqualByComparingTo(new LengthRatio(FORMAT.parse(published), 1));
        }
    }
}
