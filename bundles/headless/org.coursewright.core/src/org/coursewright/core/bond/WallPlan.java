package org.coursewright.core.bond;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.Course;
import org.coursewright.bond.Levels;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;
import org.coursewright.core.geometry.Place;
import org.coursewright.core.geometry.WallFaces;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;

/** What is known of one wall while its storey is read: what it is made of, its faces, and how it meets others. */
final class WallPlan {

    private final Wall wall;
    private final WallBody body;
    private final WallFaces faces;
    private final CourseLines lines;
    private final WallTop top;
    private final List<Obstacle> tees = new ArrayList<>();
    private WallEnd start = new WallEnd.Free();
    private WallEnd end = new WallEnd.Free();

    WallPlan(Wall wall, WallBody body, WallFaces faces, Length storeyElevation) {
        this.wall = wall;
        this.body = body;
        this.faces = faces;
        this.lines = new CourseLines(body.courseHeight(), storeyElevation.plus(wall.getBase()));
        this.top = WallTop.of(wall, faces.outer());
    }

    Wall wall() {
        return wall;
    }

    String mark() {
        return wall.getMark();
    }

    WallBody body() {
        return body;
    }

    WallFaces faces() {
        return faces;
    }

    /** @return from outer start face to outer end face */
    Length length() {
        return faces.outer();
    }

    CourseLines lines() {
        return lines;
    }

    /** @return its courses, from the bottom up */
    List<Course> courses() {
        return lines.under(top, body.stock().shortestPiece());
    }

    /** @return the courses of the building in which another wall stands beside this one with one of its ends */
    Levels levelsBeside(WallPlan other, Place itsEnd) {
        return levelsBeside(other, itsEnd == Place.START ? Length.ZERO : other.length());
    }

    /** @return the courses of the building in which another wall stands beside this one with a place along it */
    Levels levelsBeside(WallPlan other, Length along) {
        return isCoursed() && other.isCoursed() && coursesWith(other) ? other.levelsAt(along) : Levels.ALL;
    }

    /** A wall whose bed joints are less than nothing is told later and never laid. */
    private boolean isCoursed() {
        return body.rule().bedNominal().signum() >= 0;
    }

    private Levels levelsAt(Length along) {
        List<Integer> levels = courses().stream()
                .filter(course -> !along.isLessThan(course.from()) && !along.isGreaterThan(course.to()))
                .map(Course::level).toList();
        return levels.isEmpty() ? new Levels(1, 0) : new Levels(levels.get(0), levels.get(levels.size() - 1));
    }

    WallTop top() {
        return top;
    }

    WallEnd start() {
        return start;
    }

    WallEnd end() {
        return end;
    }

    List<Obstacle> tees() {
        return tees;
    }

    void startsWith(WallEnd how) {
        start = how;
    }

    void endsWith(WallEnd how) {
        end = how;
    }

    void isCrossedBy(Obstacle tee) {
        tees.add(tee);
    }

    /** @return whether its courses lie at the same heights as another wall's, so that the two can be bonded */
    boolean coursesWith(WallPlan other) {
        return lines.courseHeight().equals(other.lines.courseHeight())
                && (lines.base().minus(other.lines.base()).units()) % lines.courseHeight().units() == 0;
    }
}
