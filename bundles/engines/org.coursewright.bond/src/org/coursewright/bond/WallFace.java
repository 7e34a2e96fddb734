package org.coursewright.bond;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * One wall as the mason sees it: how long, of what, in which courses, and what interrupts them.
 *
 * @param mark the wall's mark, unique in the request
 * @param length from outer start face to outer end face, greater than zero
 * @param stock the pieces it may be laid of
 * @param rule what the layout must keep
 * @param courses from the bottom up, numbered without a gap
 * @param start what happens at position zero
 * @param end what happens at {@code length}
 * @param obstacles what interrupts courses, in any order; they may overlap
 * @param pins what somebody decided about single runs, in any order; one that lies in no run is left aside
 */
public record WallFace(String mark, Length length, PieceStock stock, JointRule rule, List<Course> courses,
        WallEnd start,
        WallEnd end, List<Obstacle> obstacles, List<Pin> pins) {

    public WallFace {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(stock, "stock");
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
        courses = List.copyOf(courses);
        obstacles = List.copyOf(obstacles);
        pins = List.copyOf(pins);
    }

    /** A wall without pins. */
    public WallFace(String mark, Length length, PieceStock stock, JointRule rule, List<Course> courses, WallEnd start,
            WallEnd end, List<Obstacle> obstacles) {
        this(mark, length, stock, rule, courses, start, end, obstacles, List.of());
    }
}
