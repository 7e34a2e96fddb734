package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.coursewright.bond.Course;
import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.exchange.sheet.SheetOpening;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.TopMark;
import org.coursewright.exchange.sheet.page.Label;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.exchange.sheet.page.Shade;
import org.coursewright.exchange.sheet.page.Spot;
import org.coursewright.measure.Length;

/** The wall seen from its right-hand side: every piece, joint, opening, lintel and beam at true scale. */
final class ElevationView {

    private static final List<Double> PIECE_SIZES = List.of(2.2, 2.0, 1.8, 1.6);
    private static final List<Double> OPENING_SIZES = List.of(3.0, 2.5, 2.1, 1.8);

    private final SheetWall wall;
    private final SheetFormat format;
    private final Projection paper;
    private final Drawing drawing;
    private final Map<Length, String> letters;

    ElevationView(SheetWall wall, SheetFormat format, Projection paper, Drawing drawing) {
        this.wall = wall;
        this.format = format;
        this.paper = paper;
        this.drawing = drawing;
        this.letters = new LaidPieces(wall.layout(), format).letters();
    }

    void draw() {
        wall.layout().courses().forEach(this::drawOtherWalls);
        wall.face().obstacles().forEach(this::drawMember);
        wall.layout().courses().forEach(course -> course.runs().forEach(run -> draw(course.course(), run)));
        wall.layout().unfillable().forEach(this::draw);
        wall.openings().forEach(this::draw);
        wall.face().obstacles().forEach(this::nameMember);
        outline();
    }

    /** Where neither pieces nor openings, lintels, beams or empty runs are, another wall runs through. */
    private void drawOtherWalls(CourseLayout layout) {
        Course course = layout.course();
        List<Stretch> taken = Stream.concat(
                Stream.concat(layout.runs().stream().map(run -> new Stretch(run.from(), run.to())),
                        wall.layout().unfillable().stream().filter(run -> run.course() == course.number())
                                .map(run -> new Stretch(run.from(), run.to()))),
                wall.face().obstacles().stream().filter(obstacle -> obstacle.kind() != Obstacle.Kind.TEE)
                        .filter(obstacle -> obstacle.firstCourse() <= course.number()
                                && course.number() <= obstacle.lastCourse())
                        .map(obstacle -> new Stretch(obstacle.from(), obstacle.to())))
                .sorted(Comparator.comparing(Stretch::from)).toList();
        Stretch.gaps(taken, new Stretch(course.from(), course.to())).stream()
                .map(gap -> underRake(course, new Convex(paper.box(gap.from(), gap.to(), bed(course), top(course)))))
                .filter(gap -> !gap.isEmpty())
                .forEach(gap -> drawing.shape(gap.corners(), Pen.DASHED, Shade.LIGHT));
    }

    private void drawMember(Obstacle obstacle) {
        if (isMember(obstacle)) {
            drawing.shape(paper.box(obstacle.from(), obstacle.to(), line(obstacle.firstCourse() - 1),
                    line(obstacle.lastCourse())), Pen.MEDIUM, Shade.MIDDLE);
        }
    }

    private void nameMember(Obstacle obstacle) {
        if (isMember(obstacle)) {
            String text = (obstacle.kind() == Obstacle.Kind.LINTEL ? "lintel " : "beam ") + obstacle.mark();
            Convex box = new Convex(paper.box(obstacle.from(), obstacle.to(), line(obstacle.firstCourse() - 1),
                    line(obstacle.lastCourse())));
            write(box, List.of(text), OPENING_SIZES);
        }
    }

    private static boolean isMember(Obstacle obstacle) {
        return obstacle.kind() == Obstacle.Kind.LINTEL || obstacle.kind() == Obstacle.Kind.BEAM;
    }

    private void draw(Course course, Run run) {
        for (PlacedPiece placed : PlacedPiece.of(run)) {
            Convex piece = underRake(course,
                    new Convex(paper.box(placed.from(), placed.to(), bed(course), top(course))));
            if (!piece.isEmpty()) {
                draw(placed.piece(), piece);
            }
        }
    }

    private void draw(Piece piece, Convex shape) {
        PieceStyle.draw(drawing, shape, piece.kind(), paper.scale());
        if (piece.kind() == Piece.Kind.CUT) {
            write(shape, List.of(format.length(piece.length()), letters.get(format.shown(piece.length()))),
                    PIECE_SIZES);
        }
    }

    private void draw(UnfillableRun run) {
        Length bottom = line(run.course() - 1);
        Length top = line(run.course());
        Convex box = new Convex(paper.box(run.from(), run.to(), bottom, top));
        drawing.shape(box.corners(), Pen.DASHED, Shade.PAPER);
        write(box, List.of("not filled", "?"), PIECE_SIZES);
    }

    private void draw(SheetOpening opening) {
        Convex box = new Convex(paper.box(opening.offset(), opening.farJamb(), opening.sill(), opening.head()));
        drawing.shape(box.corners(), Pen.MEDIUM, Shade.PAPER);
        List<Spot> corners = box.corners();
        drawing.line(corners.get(0).x(), corners.get(0).y(), corners.get(2).x(), corners.get(2).y(), Pen.HAIR);
        drawing.line(corners.get(1).x(), corners.get(1).y(), corners.get(3).x(), corners.get(3).y(), Pen.HAIR);
        String size = "%s × %s".formatted(format.length(opening.width()), format.length(opening.height()));
        write(box, List.of(opening.mark() + "  " + size, opening.mark()), OPENING_SIZES);
    }

    /** Writes the first of the texts that fits, as large as it fits, or nothing. */
    private void write(Convex shape, List<String> texts, List<Double> sizes) {
        Spot middle = shape.middle();
        List<Label> fitting = new ArrayList<>();
        for (String text : texts) {
            sizes.stream().map(size -> drawing.middle(middle.x(), middle.y(), text, size))
                    .filter(label -> shape.holds(drawing.area(label))).findFirst().ifPresent(fitting::add);
        }
        fitting.stream().findFirst().ifPresent(drawing::cleared);
    }

    private Convex underRake(Course course, Convex piece) {
        Length top = course.bottom().plus(course.height());
        Length reached = top.isGreaterThan(wall.highest()) ? wall.highest() : top;
        Convex cut = piece;
        if (course.topFrom().isGreaterThan(course.from())) {
            cut = cut.leftOf(paper.at(course.topFrom(), reached), paper.at(course.from(), course.bottom()));
        }
        if (course.topTo().isLessThan(course.to())) {
            cut = cut.leftOf(paper.at(course.to(), course.bottom()), paper.at(course.topTo(), reached));
        }
        return cut.leftOf(paper.at(wall.length(), reached), paper.at(Length.ZERO, reached));
    }

    private void outline() {
        List<TopMark> top = wall.top();
        for (int i = 1; i < top.size(); i++) {
            stroke(paper.at(top.get(i - 1).offset(), top.get(i - 1).height()),
                    paper.at(top.get(i).offset(), top.get(i).height()));
        }
        stroke(paper.at(Length.ZERO, Length.ZERO), paper.at(wall.length(), Length.ZERO));
        stroke(paper.at(Length.ZERO, Length.ZERO), paper.at(Length.ZERO, top.get(0).height()));
        stroke(paper.at(wall.length(), Length.ZERO), paper.at(wall.length(), top.get(top.size() - 1).height()));
    }

    private void stroke(Spot from, Spot to) {
        drawing.line(from.x(), from.y(), to.x(), to.y(), Pen.MEDIUM);
    }

    /** @return top of the bed joint that a course begins with */
    private Length bed(Course course) {
        return top(course).minus(wall.unitHeight());
    }

    private static Length top(Course course) {
        return course.bottom().plus(course.height());
    }

    /** @return top of the course with that number, zero for the base */
    private Length line(int course) {
        List<Length> lines = LineMarks.onPole(wall);
        return lines.get(Math.min(Math.max(course, 0), lines.size() - 1));
    }
}
