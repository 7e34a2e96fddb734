package org.coursewright.exchange.sheet;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Course;
import org.coursewright.bond.JointRule;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.PieceStock;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.Progress;

/** Walls of 14 x 10 x 4 in units in courses of 4 1/2 in, with free ends. */
public final class MadeWall {

    private static final Length COURSE = Length.ofInchFraction(9, 2);

    private MadeWall() {
    }

    /** @return a wall with openings a course high and up, laid */
    public static SheetWall of(String mark, Length length, int courses, SheetOpening... openings) {
        List<Course> lines = IntStream.rangeClosed(1, courses)
                .mapToObj(i -> Course.level(i, i, COURSE.times(i - 1L), COURSE, length)).toList();
        WallFace face = new WallFace(mark, length,
                new PieceStock(Length.ofInches(14), List.of(), Length.ofInches(3), Length.ofInchFraction(1, 4),
                        Length.ofInchFraction(3, 16)),
                new JointRule(Length.ofInchFraction(7, 2), Length.ofInchFraction(3, 8), Length.ofInchFraction(1, 2),
                        Length.ofInchFraction(3, 4)),
                lines, new WallEnd.Free(), new WallEnd.Free(), Stream.of(openings).map(MadeWall::obstacle).toList());
        Length height = COURSE.times(courses);
        return new SheetWall("Made", "B14", "stretcher", Length.ofInches(10), Length.ofInches(4), List.of(openings),
                List.of(new TopMark(Length.ZERO, height), new TopMark(length, height)), LengthFormat.INCHES, face,
                BondSolver.standard().solve(new BondRequest(List.of(face), List.of()), Progress.NONE).walls().get(0));
    }

    private static Obstacle obstacle(SheetOpening opening) {
        return new Obstacle(Obstacle.Kind.OPENING, opening.mark(), opening.offset(), opening.farJamb(),
                (int) (opening.sill().units() / COURSE.units()) + 1, (int) (opening.head().units() / COURSE.units()),
                java.util.Optional.empty());
    }
}
