package org.coursewright.takeoff.quantities;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.coursewright.measure.Length;

/** Walls to measure. */
final class Walls {

    private Walls() {
    }

    /** So many equal courses of so many whole units, each unit with one head joint: the module repeated. */
    static LaidWall modular(UnitShape unit, Length face, Length thickness, Length head, Length bed, int units,
            int courses) {
        LaidRun run = new LaidRun(Length.ZERO, face.plus(head).times(units), head.times(units), false, true,
                Stream.generate(() -> LaidPiece.square(face, LaidPiece.Kind.WHOLE)).limit(units).toList());
        return new LaidWall("M", unit, thickness, IntStream.rangeClosed(1, courses).mapToObj(
                number -> new LaidCourse(number, unit.height(), bed, List.of(run))).toList());
    }

    /** A wall of random pieces, joints, gaps and rakes. */
    static LaidWall random(Random random) {
        UnitShape unit = new UnitShape("U", length(random, 20_000, 100_000), length(random, 20_000, 80_000),
                length(random, 10_000, 40_000));
        boolean stretcher = random.nextBoolean();
        Length face = stretcher ? unit.length() : unit.width();
        List<LaidCourse> courses = new ArrayList<>();
        for (int number = 1; number <= 1 + random.nextInt(6); number++) {
            Length height = random.nextInt(4) == 0 ? length(random, 5_000, 9_000) : unit.height();
            courses.add(new LaidCourse(number, height, length(random, 0, 5_000), runs(random, face)));
        }
        return new LaidWall("R", unit, stretcher ? unit.width() : unit.length(), courses);
    }

    private static List<LaidRun> runs(Random random, Length face) {
        List<LaidRun> runs = new ArrayList<>();
        Length from = Length.ZERO;
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            LaidRun run = run(random, face, from);
            runs.add(run);
            from = from.plus(run.length()).plus(length(random, 1, 300_000));
        }
        return runs;
    }

    private static LaidRun run(Random random, Length face, Length from) {
        List<LaidPiece> pieces = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(12); i++) {
            pieces.add(piece(random, face));
        }
        boolean jointAtStart = random.nextBoolean();
        boolean jointAtEnd = random.nextBoolean();
        boolean hasJoint = pieces.size() > 1 || jointAtStart || jointAtEnd;
        Length joints = hasJoint ? length(random, 0, 50_000) : Length.ZERO;
        Length length = pieces.stream().map(LaidPiece::length).reduce(joints, Length::plus);
        return new LaidRun(from, length, joints, jointAtStart, jointAtEnd, pieces);
    }

    private static LaidPiece piece(Random random, Length face) {
        return switch (random.nextInt(5)) {
            case 0 -> LaidPiece.square(length(random, 1, (int) face.units()), LaidPiece.Kind.CUT);
            case 1 -> LaidPiece.square(length(random, 1, (int) face.units()), LaidPiece.Kind.SPECIAL);
            case 2 -> new LaidPiece(length(random, 1, (int) face.units()), length(random, 0, (int) face.units()),
                    LaidPiece.Kind.CUT);
            default -> LaidPiece.square(face, LaidPiece.Kind.WHOLE);
        };
    }

    private static Length length(Random random, int least, int most) {
        return Length.ofUnits(least + random.nextInt(most - least + 1));
    }
}
