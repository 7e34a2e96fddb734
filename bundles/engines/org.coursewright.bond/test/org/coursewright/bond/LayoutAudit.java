package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/** Recomputes what a layout claims, from the public result alone and in the plainest way. */
public final class LayoutAudit {

    /** A joint from {@code start / parts} to {@code end / parts}. */
    private record Joint(BigInteger start, BigInteger end, BigInteger parts) {

        boolean lapsLess(Joint other, Length lap) {
            return gapLess(this, other, lap) && gapLess(other, this, lap);
        }

        private static boolean gapLess(Joint before, Joint after, Length lap) {
            BigInteger gap = after.start.multiply(before.parts).subtract(before.end.multiply(after.parts));
            return gap.compareTo(
                    BigInteger.valueOf(lap.units()).multiply(before.parts).multiply(after.parts)) < 0;
        }
    }

    private LayoutAudit() {
    }

    /** Every run adds up, keeps the rules and every count is what the pieces say. */
    public static void check(WallFace wall, WallLayout layout) {
        assertThat(layout.mark()).isEqualTo(wall.mark());
        assertThat(layout.courses()).extracting(CourseLayout::course).isEqualTo(wall.courses());
        layout.courses().forEach(course -> course.runs().forEach(run -> run(wall, course.course(), run)));
        assertThat(cuts(layout)).isEqualTo(layout.cutPieces());
        assertThat(violations(wall, layout)).isEqualTo(layout.lapViolations() + layout.straightJoints());
        layout.shortLaps().forEach(lap -> shortLap(wall, lap));
        assertThat(straightJoints(layout)).isEqualTo(layout.straightJoints());
        assertThat(layout.lowerBound()).isLessThanOrEqualTo(layout.cutPieces());
        if (layout.optimal()) {
            assertThat(layout.lowerBound()).isEqualTo(layout.cutPieces());
        }
    }

    private static void shortLap(WallFace wall, ShortLap lap) {
        assertThat(lap.upper()).isEqualTo(lap.lower() + 1);
        assertThat(lap.least()).isEqualTo(wall.rule().leastLap());
        assertThat(lap.lap()).isLessThan(new LengthRatio(lap.least(), 1));
    }

    /** Every cut of a layout has one cause, and runs that need none by themselves are not said to. */
    public static void checkReasons(BondRequest request, BondResult result, int wall) {
        List<CutReason> reasons = new CutReasons(request, result).of(wall);
        WallLayout layout = result.walls().get(wall);
        assertThat(reasons).allSatisfy(reason -> {
            assertThat(reason.causes()).isNotEmpty().allMatch(cause -> cause.cuts() > 0);
            assertThat(cutsOf(layout, reason)).isEqualTo(reason.cuts());
        });
        assertThat(reasons.stream().mapToInt(CutReason::cuts).sum()).isEqualTo(layout.cutPieces());
    }

    private static long cutsOf(WallLayout layout, CutReason reason) {
        return layout.courses().stream().filter(course -> course.course().number() == reason.course())
                .flatMap(course -> course.runs().stream())
                .filter(run -> run.from().equals(reason.from()) && run.to().equals(reason.to()))
                .flatMap(run -> run.pieces().stream()).filter(piece -> piece.kind() == Piece.Kind.CUT).count();
    }

    private static void run(WallFace wall, Course course, Run run) {
        boolean raked = course.topFrom().isGreaterThan(course.from()) || course.topTo().isLessThan(course.to());
        Length sum = run.pieces().stream().map(Piece::length).reduce(Length.ZERO, Length::plus);
        int ends = (run.startsWith() == RunEnd.JOINT ? 1 : 0) + (run.endsWith() == RunEnd.JOINT ? 1 : 0);
        assertThat(run.jointCount()).isEqualTo(run.pieces().size() - 1 + ends);
        assertThat(run.joint().isPresent()).isEqualTo(run.jointCount() > 0);
        run.joint().ifPresent(joint -> {
            assertThat(joint.count()).isEqualTo(run.jointCount());
            assertThat(joint.isWithin(wall.rule().least(), wall.rule().most())).as("joint of %s", run).isTrue();
        });
        assertThat(sum.plus(run.joint().map(joint -> joint.total()).orElse(Length.ZERO))).isEqualTo(run.length());
        for (int index = 0; index < run.pieces().size(); index++) {
            boolean atRake = index == 0 && run.startsWith() == RunEnd.RAKE
                    || index == run.pieces().size() - 1 && run.endsWith() == RunEnd.RAKE;
            piece(wall.stock(), run.pieces().get(index), atRake, raked);
        }
    }

    private static void piece(PieceStock stock, Piece piece, boolean atRake, boolean raked) {
        switch (piece.kind()) {
            case WHOLE -> assertThat(piece.length()).isEqualTo(stock.whole());
            case SPECIAL -> assertThat(stock.specials()).contains(piece.length());
            case CUT -> assertThat(piece).matches(cut -> atRake && !cut.length().isLessThan(stock.shortestPiece())
                    || raked && (cut.length().equals(stock.whole()) || stock.specials().contains(cut.length()))
                    || cut.length().units() % stock.cutStep().units() == 0
                            && !cut.length().isLessThan(stock.shortestPiece()));
        }
        assertThat(piece.length()).isLessThanOrEqualTo(stock.whole());
    }

    private static int cuts(WallLayout layout) {
        return (int) layout.courses().stream().flatMap(course -> course.runs().stream())
                .flatMap(run -> run.pieces().stream()).filter(piece -> piece.kind() == Piece.Kind.CUT).count();
    }

    /** Pairs of joints of consecutive courses whose edges are nearer than the least lap. */
    public static int violations(WallFace wall, WallLayout layout) {
        int count = 0;
        for (int course = 1; course < layout.courses().size(); course++) {
            for (Joint below : joints(layout.courses().get(course - 1))) {
                for (Joint above : joints(layout.courses().get(course))) {
                    count += below.lapsLess(above, wall.rule().leastLap()) ? 1 : 0;
                }
            }
        }
        return count;
    }

    /** Pairs of runs of consecutive courses that begin, or end, with a joint at the same place. */
    private static int straightJoints(WallLayout layout) {
        int count = 0;
        for (int course = 1; course < layout.courses().size(); course++) {
            for (Run below : layout.courses().get(course - 1).runs()) {
                for (Run above : layout.courses().get(course).runs()) {
                    count += startJoint(below).isPresent() && startJoint(below).equals(startJoint(above)) ? 1 : 0;
                    count += endJoint(below).isPresent() && endJoint(below).equals(endJoint(above)) ? 1 : 0;
                }
            }
        }
        return count;
    }

    private static Optional<Length> startJoint(Run run) {
        return run.startsWith() == RunEnd.JOINT ? Optional.of(run.from()) : Optional.empty();
    }

    private static Optional<Length> endJoint(Run run) {
        return run.endsWith() == RunEnd.JOINT ? Optional.of(run.to()) : Optional.empty();
    }

    private static List<Joint> joints(CourseLayout course) {
        List<Joint> joints = new ArrayList<>();
        for (Run run : course.runs()) {
            run.joint().ifPresent(joint -> {
                BigInteger parts = BigInteger.valueOf(joint.count());
                BigInteger width = BigInteger.valueOf(joint.total().units());
                BigInteger at = BigInteger.valueOf(run.from().units()).multiply(parts);
                if (run.startsWith() == RunEnd.JOINT) {
                    joints.add(new Joint(at, at.add(width), parts));
                    at = at.add(width);
                }
                for (Piece piece : run.pieces()) {
                    at = at.add(BigInteger.valueOf(piece.length().units()).multiply(parts));
                    if (at.compareTo(BigInteger.valueOf(run.to().units()).multiply(parts)) < 0) {
                        joints.add(new Joint(at, at.add(width), parts));
                    }
                    at = at.add(width);
                }
            });
        }
        return joints;
    }
}
