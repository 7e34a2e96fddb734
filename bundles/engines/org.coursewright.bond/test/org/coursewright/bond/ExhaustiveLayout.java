package org.coursewright.bond;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The least (lap violations, cut pieces) of a tiny wall by trying everything: every sequence of pieces in every run, every
 * combination of these in a course, course upon course. Slow, and shares no code with the engine.
 */
final class ExhaustiveLayout {

    /** Violations, then cuts. */
    record Cost(int violations, int cuts) implements Comparable<Cost> {
        @Override
        public int compareTo(Cost other) {
            return Comparator.comparingInt(Cost::violations).thenComparingInt(Cost::cuts).compare(this, other);
        }

        Cost plus(int moreViolations, int moreCuts) {
            return new Cost(violations + moreViolations, cuts + moreCuts);
        }
    }

    /** A joint; positions are {@code numerator / parts}. */
    private record Joint(long from, long to, long parts) {
    }

    private record Filling(List<Joint> joints, int cuts) {
    }

    private final WallFace wall;
    private final long whole;
    private final long least;
    private final long most;

    ExhaustiveLayout(WallFace wall) {
        this.wall = wall;
        whole = wall.stock().whole().units();
        least = wall.rule().least().units();
        most = wall.rule().most().units();
    }

    /** @param layout tells which runs there are; how they are filled is not looked at */
    Cost least(WallLayout layout) {
        List<Filling> below = List.of();
        List<Cost> costs = List.of();
        for (CourseLayout course : layout.courses()) {
            List<Filling> here = List.of(new Filling(List.of(), 0));
            for (Run run : course.runs()) {
                here = combined(here, fillings(course.course().number(), run));
            }
            List<Cost> now = new ArrayList<>();
            for (Filling filling : here) {
                now.add(best(below, costs, filling));
            }
            below = here;
            costs = now;
        }
        return costs.stream().min(Comparator.naturalOrder()).orElseThrow();
    }

    private Cost best(List<Filling> below, List<Cost> costs, Filling filling) {
        Cost best = below.isEmpty() ? new Cost(0, filling.cuts) : null;
        for (int index = 0; index < below.size(); index++) {
            Cost cost = costs.get(index).plus(violations(below.get(index), filling), filling.cuts);
            best = best == null || cost.compareTo(best) < 0 ? cost : best;
        }
        return best;
    }

    private int violations(Filling below, Filling above) {
        int count = 0;
        long lap = wall.rule().leastLap().units();
        for (Joint one : below.joints) {
            for (Joint other : above.joints) {
                long gap = Math.max(other.from * one.parts - one.to * other.parts,
                        one.from * other.parts - other.to * one.parts);
                count += gap < lap * one.parts * other.parts ? 1 : 0;
            }
        }
        return count;
    }

    private static List<Filling> combined(List<Filling> left, List<Filling> right) {
        List<Filling> all = new ArrayList<>();
        for (Filling one : left) {
            for (Filling other : right) {
                List<Joint> joints = new ArrayList<>(one.joints);
                joints.addAll(other.joints);
                all.add(new Filling(joints, one.cuts + other.cuts));
            }
        }
        return all;
    }

    /** Whether anything fills a run that the engine gave up, pins kept. */
    boolean fills(UnfillableRun run) {
        return !fillings(run.course(), new Run(run.from(), run.to(), run.startsWith(), run.endsWith(),
                Optional.empty(), 0, List.of())).isEmpty();
    }

    private List<Filling> fillings(int course, Run run) {
        List<Filling> found = new ArrayList<>();
        extend(course, run, new ArrayList<>(), 0, 0, found);
        return found;
    }

    private boolean keepsPins(int course, Run run, List<Long> pieces, long starts, long joints, long left) {
        return wall.pins().stream().filter(pin -> pin.course() == course)
                .filter(pin -> !pin.at().isLessThan(run.from()) && pin.at().isLessThan(run.to()))
                .allMatch(pin -> pin instanceof Pin.OfJoint joint
                        ? left == joints * joint.joint().units()
                        : covering(pin.at().minus(run.from()).units(), pieces, starts, joints,
                                left) == ((Pin.OfPiece) pin)
                                        .length().units());
    }

    /** Length of the piece at a place, 0 if a joint is there. */
    private static long covering(long at, List<Long> pieces, long starts, long joints, long left) {
        long parts = Math.max(1, joints);
        long from = starts * left;
        for (long piece : pieces) {
            if (from <= at * parts && at * parts < from + piece * parts) {
                return piece;
            }
            from += piece * parts + left;
        }
        return 0;
    }

    private void extend(int course, Run run, List<Long> pieces, long sum, int cuts, List<Filling> found) {
        long length = run.length().units();
        long starts = run.startsWith() == RunEnd.JOINT ? 1 : 0;
        long joints = pieces.size() - 1 + starts + (run.endsWith() == RunEnd.JOINT ? 1 : 0);
        long left = length - sum;
        if (!pieces.isEmpty() && left >= joints * least && left <= joints * most
                && keepsPins(course, run, pieces, starts, joints, left)) {
            found.add(filling(run, pieces, starts, joints, left, cuts));
        }
        if (left < (joints + 1) * least) {
            return;
        }
        for (Piece piece : pieces()) {
            pieces.add(piece.length().units());
            extend(course, run, pieces, sum + piece.length().units(), cuts + (piece.kind() == Piece.Kind.CUT ? 1 : 0),
                    found);
            pieces.remove(pieces.size() - 1);
        }
    }

    private List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece(wall.stock().whole(), Piece.Kind.WHOLE));
        wall.stock().specials().forEach(special -> pieces.add(new Piece(special, Piece.Kind.SPECIAL)));
        long step = wall.stock().cutStep().units();
        for (long cut = step; cut < whole; cut += step) {
            if (cut >= wall.stock().shortestPiece().units()) {
                pieces.add(new Piece(org.coursewright.measure.Length.ofUnits(cut), Piece.Kind.CUT));
            }
        }
        return pieces;
    }

    private static Filling filling(Run run, List<Long> pieces, long starts, long joints, long left, int cuts) {
        List<Joint> all = new ArrayList<>();
        long at = run.from().units() * joints;
        for (int piece = 0; piece <= pieces.size() && all.size() < joints; piece++) {
            if (piece > 0 || starts == 1) {
                all.add(new Joint(at, at + left, joints));
                at += left;
            }
            at += piece < pieces.size() ? pieces.get(piece) * joints : 0;
        }
        return new Filling(all, cuts);
    }
}
