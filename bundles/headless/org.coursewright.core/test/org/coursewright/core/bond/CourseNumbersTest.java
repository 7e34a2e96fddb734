package org.coursewright.core.bond;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.junit.jupiter.api.Test;

class CourseNumbersTest {

    @Test
    void numbersInARowAreARange() {
        assertThat(CourseNumbers.of(List.of(1, 2, 3, 4))).isEqualTo("1–4");
    }

    @Test
    void everySecondNumberIsARangeOfOddOrEvenOnes() {
        assertThat(CourseNumbers.of(List.of(1, 3, 5, 8, 10, 12))).isEqualTo("1–5 odd, 8–12 even");
    }

    @Test
    void fewNumbersAreListed() {
        assertThat(CourseNumbers.of(List.of(2, 3, 9))).isEqualTo("2, 3, 9");
        assertThat(CourseNumbers.of(List.of(7))).isEqualTo("7");
        assertThat(CourseNumbers.of(List.of(1, 4, 7, 10))).isEqualTo("1, 4, 7, 10");
    }
}
