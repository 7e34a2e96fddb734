package org.coursewright.bond.internal.building;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Course;
import org.coursewright.bond.InvalidBondRequestException;
import org.coursewright.bond.JointRule;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.PieceStock;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.measure.Length;

/** Refuses requests that contradict themselves. */
public final class RequestCheck {

    /** Keeps exact fractions within 64 bits; no wall of masonry is longer. */
    private static final Length LONGEST = Length.ofMillimetres(1_000_000);

    private final Map<String, Meeting> meetings = new HashMap<>();
    private final Set<String> marks = new HashSet<>();

    private RequestCheck() {
    }

    /** @throws InvalidBondRequestException naming the wall or meeting at fault and what to change */
    public static void check(BondRequest request) {
        RequestCheck check = new RequestCheck();
        request.walls().forEach(wall -> require(check.marks.add(wall.mark()), "Two walls have the mark %s: rename one.",
                wall.mark()));
        request.meetings().forEach(check::meeting);
        request.walls().forEach(check::wall);
    }

    private void meeting(Meeting meeting) {
        String id = meeting.id();
        require(meetings.put(id, meeting) == null, "Two meetings have the id %s: rename one.", id);
        List<String> walls = meeting.walls();
        require(!walls.isEmpty(), "No wall ends at meeting %s: name at least one.", id);
        for (String mark : walls) {
            require(marks.contains(mark),
                    "Meeting %s names wall %s, which the request does not have: add the wall, or leave it out of the meeting.",
                    id, mark);
        }
        Optional<String> pinned = meeting.throughOnOdd();
        require(pinned.isEmpty() || walls.subList(0, Math.min(2, walls.size())).contains(pinned.get()),
                "Wall %s cannot run through at meeting %s: choose one of the first two of %s.", pinned.orElse(""), id,
                walls);
    }

    private void wall(WallFace wall) {
        require(wall.length().signum() > 0, "Wall %s is %s long: it must be longer than nothing.", wall.mark(),
                wall.length());
        require(!wall.length().isGreaterThan(LONGEST), "Wall %s is %s long: walls longer than %s are not laid.",
                wall.mark(), wall.length(), LONGEST);
        stock(wall.mark(), wall.stock());
        rule(wall.mark(), wall.stock(), wall.rule());
        courses(wall);
        end(wall, wall.start());
        end(wall, wall.end());
        wall.obstacles().forEach(obstacle -> obstacle(wall, obstacle));
    }

    private static void stock(String mark, PieceStock stock) {
        positive(mark, "whole unit", stock.whole());
        positive(mark, "shortest piece", stock.shortestPiece());
        positive(mark, "cut step", stock.cutStep());
        require(stock.kerf().signum() >= 0, "The kerf of wall %s is %s: it must not be negative.", mark, stock.kerf());
        for (Length special : stock.specials()) {
            positive(mark, "special", special);
            require(!special.isGreaterThan(stock.whole()),
                    "The special of %s of wall %s is longer than the unit of %s: choose a shorter one.", special, mark,
                    stock.whole());
        }
    }

    private static void rule(String mark, PieceStock stock, JointRule rule) {
        require(rule.least().signum() >= 0, "The least head joint of wall %s is %s: it must not be negative.", mark,
                rule.least());
        require(!rule.least().isGreaterThan(rule.most()),
                "The least head joint of wall %s (%s) is above the most (%s): exchange them.", mark, rule.least(),
                rule.most());
        require(!rule.nominal().isLessThan(rule.least()) && !rule.nominal().isGreaterThan(rule.most()),
                "The nominal head joint of wall %s (%s) is not between the least (%s) and the most (%s).", mark,
                rule.nominal(), rule.least(), rule.most());
        require(rule.leastLap().signum() >= 0, "The least lap of wall %s is %s: it must not be negative.", mark,
                rule.leastLap());
        require(!rule.leastLap().times(2).isGreaterThan(stock.whole()),
                "The least lap of wall %s (%s) is above half its unit (%s): no unit can lap its neighbours so far.",
                mark, rule.leastLap(), stock.whole());
    }

    private static void courses(WallFace wall) {
        int expected = wall.courses().isEmpty() ? 0 : wall.courses().get(0).number();
        for (Course course : wall.courses()) {
            require(course.number() == expected, "Courses of wall %s are not numbered in order: %s follows %s.",
                    wall.mark(), course.number(), expected - 1);
            expected++;
        }
    }

    private void end(WallFace wall, WallEnd end) {
        if (end instanceof WallEnd.Corner corner) {
            positive(wall.mark(), "setback at meeting " + corner.meeting(), corner.setback());
            known(wall, corner.meeting());
        } else if (end instanceof WallEnd.Bonded bonded) {
            positive(wall.mark(), "reach at meeting " + bonded.meeting(), bonded.reach());
            known(wall, bonded.meeting());
        }
    }

    private void known(WallFace wall, String id) {
        require(meetings.containsKey(id), "Wall %s ends at meeting %s, which the request does not have.", wall.mark(),
                id);
        require(meetings.get(id).walls().contains(wall.mark()), "Wall %s ends at meeting %s, which does not name it.",
                wall.mark(), id);
    }

    private void obstacle(WallFace wall, Obstacle obstacle) {
        require(obstacle.from().isLessThan(obstacle.to()),
                "%s in wall %s reaches from %s to %s: it must end after it begins.", obstacle.mark(), wall.mark(),
                obstacle.from(), obstacle.to());
        obstacle.meeting().ifPresent(id -> require(meetings.containsKey(id),
                "%s in wall %s belongs to meeting %s, which the request does not have.", obstacle.mark(), wall.mark(),
                id));
    }

    private static void positive(String mark, String what, Length length) {
        require(length.signum() > 0, "The %s of wall %s is %s: it must be greater than zero.", what, mark, length);
    }

    private static void require(boolean condition, String message, Object... values) {
        if (!condition) {
            throw new InvalidBondRequestException(message.formatted(values));
        }
    }
}
