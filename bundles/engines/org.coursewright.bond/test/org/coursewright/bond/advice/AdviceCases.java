package org.coursewright.bond.advice;

import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallBuilder;
import org.coursewright.bond.WallFace;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/** Cases of advice small enough to be worked by hand, and the calls that tests of advice make. */
final class AdviceCases {

    static final String OPENING = Obstacle.Kind.OPENING.name();

    private AdviceCases() {
    }

    /** Joints of half an inch, no wider and no narrower: ten units and nine joints, and halves in every other course. */
    static WallBuilder tenUnits() {
        return wall("144 1/2").stocked(stock("14", "6 3/4")).ruled(rule("3 1/2", "1/2", "1/2", "1/2")).courses(4);
    }

    /** Three units and two joints take 43 in before the opening, four units and three joints 57 1/2 in behind it. */
    static BondRequest opening(String from, String to) {
        return tenUnits().obstacle(Obstacle.Kind.OPENING, in(from), in(to), 1, 2).alone();
    }

    static Adjustable offset(String wall, String tolerance) {
        return Adjustable.within(wall, Optional.of(OPENING), Dimension.OFFSET, in(tolerance));
    }

    static Adjustable width(String wall, String tolerance) {
        return Adjustable.within(wall, Optional.of(OPENING), Dimension.WIDTH, in(tolerance));
    }

    static Adjustable length(String wall, String tolerance) {
        return Adjustable.within(wall, Optional.empty(), Dimension.LENGTH, in(tolerance));
    }

    static Adjustable nearJamb(String wall, String tolerance) {
        return Adjustable.within(wall, Optional.of(OPENING), Dimension.NEAR_JAMB, in(tolerance));
    }

    static Advice advise(BondRequest building, List<Adjustable> adjustables, Optional<Length> budget) {
        return BondAdvisor.standard().advise(new AdviceRequest(building, adjustables, List.of(), in("1/4"), budget),
                Progress.NONE);
    }

    static DimensionProfile soon(BondRequest building, BondResult laid, Adjustable adjustable) {
        return BondAdvisor.standard().profile(
                new ProfileRequest(building, laid, adjustable, List.of(), in("1/4")), Progress.NONE);
    }

    static DimensionProfile soon(BondRequest building, Adjustable adjustable) {
        return soon(building, BondSolver.standard().solve(building, Progress.NONE), adjustable);
    }

    static List<Adjustable> adjustables(BondRequest room) {
        List<Adjustable> adjustables = new ArrayList<>();
        for (WallFace face : room.walls()) {
            if (face.obstacles().stream().anyMatch(obstacle -> obstacle.mark().equals(OPENING))) {
                adjustables.add(offset(face.mark(), "1"));
                adjustables.add(width(face.mark(), "1"));
            }
        }
        return adjustables;
    }

    static BondRequest handed(BondRequest room, BondResult laid) {
        return new BondRequest(room.walls(), room.meetings().stream().map(meeting -> new Meeting(meeting.id(),
                meeting.kind(), meeting.walls(), Optional.ofNullable(laid.throughOnOdd().get(meeting.id())))).toList());
    }
}
