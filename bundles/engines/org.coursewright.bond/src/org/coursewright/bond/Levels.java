package org.coursewright.bond;

/**
 * Courses of the building from one to another.
 *
 * @param first the lowest
 * @param last the highest; below {@code first} if there are none
 */
public record Levels(int first, int last) {

    /** Every course of the building. */
    public static final Levels ALL = new Levels(Integer.MIN_VALUE, Integer.MAX_VALUE);

    /** @return whether a course of the building is among these */
    public boolean contains(int level) {
        return first <= level && level <= last;
    }
}
