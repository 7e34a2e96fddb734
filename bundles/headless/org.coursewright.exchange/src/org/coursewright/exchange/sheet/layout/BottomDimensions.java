package org.coursewright.exchange.sheet.layout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.exchange.sheet.SheetOpening;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.page.Anchor;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.measure.Length;

/** Faces and jambs under the elevation: running from the outer start face, from one to the next, and over all. */
final class BottomDimensions {

    static final double SIZE = 2.3;
    private static final double PITCH = 2.6;
    private static final double LEADER = 3;
    private static final double CHAIN = 5;
    private static final double TICK = 0.8;

    private final SheetWall wall;
    private final SheetFormat format;
    private final Drawing drawing;

    BottomDimensions(SheetWall wall, SheetFormat format, Drawing drawing) {
        this.wall = wall;
        this.format = format;
        this.drawing = drawing;
    }

    /** @return outer start face, jambs and outer end face, from the outer start face */
    static List<Length> positions(SheetWall wall) {
        Stream<Length> jambs = wall.openings().stream().flatMap(BottomDimensions::jambs);
        return Stream.concat(Stream.of(Length.ZERO, wall.length()), jambs).distinct().sorted().toList();
    }

    private static Stream<Length> jambs(SheetOpening opening) {
        return Stream.of(opening.offset(), opening.farJamb());
    }

    /** @return paper it takes from the wall's base down (mm) */
    double depth() {
        return LEADER + longest() + 2 * CHAIN + 2;
    }

    void draw(Projection paper) {
        List<Length> positions = positions(wall);
        drawRunning(paper, positions);
        double chain = paper.bottom() - LEADER - longest() - CHAIN;
        for (int i = 1; i < positions.size() && positions.size() > 2; i++) {
            drawStep(paper, positions.get(i - 1), positions.get(i), chain);
        }
        drawStep(paper, Length.ZERO, wall.length(), chain - CHAIN);
    }

    private void drawRunning(Projection paper, List<Length> positions) {
        double[] wanted = positions.stream().mapToDouble(paper::x).toArray();
        Optional<double[]> places = Spread.of(wanted, PITCH, paper.left() - PITCH, paper.x(wall.length()) + PITCH);
        double top = paper.bottom();
        for (int i = 0; i < wanted.length && places.isPresent(); i++) {
            double at = places.get()[i];
            drawing.line(wanted[i], top - 0.4, at, top - LEADER + 0.3, Pen.HAIR);
            drawing.turned(at, top - LEADER, format.length(positions.get(i)), SIZE, Anchor.END);
        }
    }

    /** A step that is too short for its text goes without: the running dimensions hold it. */
    private void drawStep(Projection paper, Length from, Length to, double y) {
        drawing.line(paper.x(from), y, paper.x(to), y, Pen.FINE);
        Stream.of(from, to).mapToDouble(paper::x)
                .forEach(x -> drawing.line(x - TICK, y - TICK, x + TICK, y + TICK, Pen.MEDIUM));
        String text = format.length(to.minus(from));
        if (drawing.width(text, SIZE) + 2 * TICK < paper.size(to.minus(from))) {
            drawing.text((paper.x(from) + paper.x(to)) / 2, y + SIZE * 0.75, text, SIZE, Anchor.MIDDLE);
        }
    }

    private double longest() {
        return positions(wall).stream().mapToDouble(position -> drawing.width(format.length(position), SIZE)).max()
                .orElse(0);
    }
}
