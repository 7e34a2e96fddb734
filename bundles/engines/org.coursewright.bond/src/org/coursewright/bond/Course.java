package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * One course of a wall: a bed joint and the units on it.
 *
 * @param number counted from the wall's base, the first is 1
 * @param level the course of the building that it lies in, so that courses of walls that meet can be told odd from even
 * @param bottom bottom of its bed joint above the wall's base
 * @param height bed joint and unit together, greater than zero
 * @param from where masonry begins at the bottom of the course: zero but under a rake
 * @param to where masonry ends at the bottom of the course: the wall's length but under a rake
 * @param topFrom where masonry begins at the top of the course; greater than {@code from} under a rake
 * @param topTo where masonry ends at the top of the course; less than {@code to} under a rake
 */
public record Course(int number, int level, Length bottom, Length height, Length from, Length to, Length topFrom,
        Length topTo) {

    public Course {
        Objects.requireNonNull(bottom, "bottom");
        Objects.requireNonNull(height, "height");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(topFrom, "topFrom");
        Objects.requireNonNull(topTo, "topTo");
    }

    /**
     * A course as long as its wall.
     *
     * @return that course
     */
    public static Course level(int number, int level, Length bottom, Length height, Length wallLength) {
        return new Course(number, level, bottom, height, Length.ZERO, wallLength, Length.ZERO, wallLength);
    }

    /** @return whether the course lies in an odd course of the building */
    public boolean isOdd() {
        return (level & 1) == 1;
    }
}
