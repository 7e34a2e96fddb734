package org.coursewright.benchmarks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.coursewright.bond.BondResult;
import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Effort;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.ShortLap;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/** Spoils a sound layout in every way that a verifier has to notice. */
final class Spoiling {

    private static final ShortLap SHORT = new ShortLap(1, 2, Length.ZERO, new LengthRatio(Length.ZERO, 1),
            Length.ofMillimetres(1));

    private Spoiling() {
    }

    /** @return by what was done the layout with its first wall spoiled */
    static Map<String, BondResult> of(BondResult sound) {
        Map<String, BondResult> spoiled = new LinkedHashMap<>();
        spoiled.put("a cut not counted", wall(sound, wall -> counted(wall, 1, List.of())));
        spoiled.put("a lap violation not there", wall(sound, wall -> counted(wall, 0, List.of(SHORT))));
        spoiled.put("a course left out",
                wall(sound, wall -> laid(wall, wall.courses().subList(1, wall.courses().size()))));
        spoiled.put("a run left out", run(sound, run -> Optional.empty()));
        spoiled.put("a piece too many", run(sound, run -> Optional.of(pieces(run, longer(run)))));
        spoiled.put("a piece a hair too long", run(sound, run -> Optional.of(pieces(run, stretched(run)))));
        spoiled.put("a piece called what it is not", run(sound, run -> Optional.of(pieces(run, renamed(run)))));
        spoiled.put("a joint not counted", run(sound, run -> Optional.of(new Run(run.from(), run.to(),
                run.startsWith(), run.endsWith(), run.joint(), run.jointCount() + 1, run.pieces()))));
        if (!sound.throughOnOdd().isEmpty()) {
            spoiled.put("a meeting not handed", new BondResult(sound.walls(), Map.of(), false, 0, Effort.FULL));
        }
        return spoiled;
    }

    private static BondResult wall(BondResult sound, UnaryOperator<WallLayout> change) {
        List<WallLayout> walls = new ArrayList<>(sound.walls());
        walls.set(0, change.apply(walls.get(0)));
        return new BondResult(walls, sound.throughOnOdd(), false, 0, Effort.FULL);
    }

    private static WallLayout counted(WallLayout wall, int cuts, List<ShortLap> more) {
        List<ShortLap> shortLaps = new ArrayList<>(wall.shortLaps());
        shortLaps.addAll(more);
        return new WallLayout(wall.mark(), wall.courses(), wall.cutPieces() + cuts, shortLaps, wall.straightJoints(),
                wall.unfillable(), false, 0);
    }

    private static WallLayout laid(WallLayout wall, List<CourseLayout> courses) {
        return new WallLayout(wall.mark(), courses, wall.cutPieces(), wall.shortLaps(), wall.straightJoints(),
                wall.unfillable(), false,
                0);
    }

    private interface RunChange {
        Optional<Run> apply(Run run);
    }

    private static BondResult run(BondResult sound, RunChange change) {
        return wall(sound, wall -> {
            List<CourseLayout> courses = new ArrayList<>(wall.courses());
            CourseLayout course = courses.stream().filter(each -> !each.runs().isEmpty()).findFirst().orElseThrow();
            List<Run> runs = new ArrayList<>(change.apply(course.runs().get(0)).stream().toList());
            runs.addAll(course.runs().subList(1, course.runs().size()));
            courses.set(courses.indexOf(course), new CourseLayout(course.course(), runs));
            return laid(wall, courses);
        });
    }

    private static Run pieces(Run run, List<Piece> pieces) {
        return new Run(run.from(), run.to(), run.startsWith(), run.endsWith(), run.joint(), run.jointCount(), pieces);
    }

    private static List<Piece> longer(Run run) {
        List<Piece> pieces = new ArrayList<>(run.pieces());
        pieces.add(pieces.get(0));
        return pieces;
    }

    private static List<Piece> stretched(Run run) {
        List<Piece> pieces = new ArrayList<>(run.pieces());
        pieces.set(0, new Piece(pieces.get(0).length().plus(Length.ofUnits(1)), pieces.get(0).kind()));
        return pieces;
    }

    private static List<Piece> renamed(Run run) {
        List<Piece> pieces = new ArrayList<>(run.pieces());
        Piece first = pieces.get(0);
        pieces.set(0, new Piece(first.length(),
                first.kind() == Piece.Kind.SPECIAL ? Piece.Kind.WHOLE : Piece.Kind.SPECIAL));
        return pieces;
    }
}
