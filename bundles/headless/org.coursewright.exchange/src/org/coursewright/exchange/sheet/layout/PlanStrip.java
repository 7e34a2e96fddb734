package org.coursewright.exchange.sheet.layout;

import java.util.List;
import java.util.Optional;

import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.page.Anchor;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.measure.Length;

/** The first course from above, with a mark on the line for every edge of a joint. */
final class PlanStrip {

    private static final double SIZE = 2.1;
    private static final double PITCH = 2.3;
    private static final double LEADER = 4;
    private static final double TITLE = 5;
    private static final double LINE = 1.6;
    private static final double UNDER = 6;
    private static final double BEYOND = 8;

    private final SheetWall wall;
    private final SheetFormat format;
    private final Drawing drawing;
    private final Length lineOffset;

    PlanStrip(SheetWall wall, SheetFormat format, Drawing drawing, Length lineOffset) {
        this.wall = wall;
        this.format = format;
        this.drawing = drawing;
        this.lineOffset = lineOffset;
    }

    /** @return paper it takes from top to bottom (mm) */
    double height(int scale) {
        return TITLE + longest() + LEADER + Projection.size(wall.thickness(), scale) + UNDER;
    }

    /** @return whether the scale leaves room for all marks */
    boolean hasRoom(Projection paper) {
        return places(paper).isPresent();
    }

    /** Draws it under {@code top} (mm); {@code paper} tells where along the sheet the wall lies. */
    void draw(Projection paper, double top) {
        String where = hasRoom(paper)
                ? "marks along the line from the outer start face"
                : "marks along the line in the table";
        drawing.strong(paper.left(), top - TITLE / 2, "First course from above: " + where, BottomDimensions.SIZE);
        double back = top - TITLE - longest() - LEADER;
        double front = back - paper.size(wall.thickness());
        Projection plan = new Projection(paper.left(), front, paper.scale());
        LineMarks.firstCourse(wall).forEach(piece -> draw(plan, piece));
        places(paper).ifPresent(places -> drawMarks(paper, back, places));
        drawing.line(paper.x(wall.masonryFrom()) - BEYOND / 2, front - LINE, paper.x(wall.masonryTo()) + BEYOND / 2,
                front - LINE,
                Pen.CHAIN);
        drawing.text(paper.left(), front - LINE - SIZE, "Line %s off this face (distance not to scale)"
                .formatted(format.length(lineOffset)), SIZE, Anchor.START);
    }

    private void draw(Projection plan, PlacedPiece placed) {
        Convex box = new Convex(plan.box(placed.from(), placed.to(), Length.ZERO, wall.thickness()));
        PieceStyle.draw(drawing, box, placed.piece().kind(), plan.scale());
    }

    private void drawMarks(Projection paper, double back, double[] places) {
        List<Length> marks = LineMarks.alongFirstCourse(wall);
        for (int i = 0; i < places.length; i++) {
            drawing.line(paper.x(marks.get(i)), back + 0.3, places[i], back + LEADER - 0.4, Pen.HAIR);
            drawing.turned(places[i], back + LEADER, format.mark(marks.get(i)), SIZE, Anchor.START);
        }
    }

    private Optional<double[]> places(Projection paper) {
        double[] wanted = LineMarks.alongFirstCourse(wall).stream().mapToDouble(paper::x).toArray();
        return Spread.of(wanted, PITCH, paper.x(wall.masonryFrom()) - BEYOND, paper.x(wall.masonryTo()) + BEYOND);
    }

    private double longest() {
        return LineMarks.alongFirstCourse(wall).stream().mapToDouble(mark -> drawing.width(format.mark(mark), SIZE))
                .max().orElse(0);
    }
}
