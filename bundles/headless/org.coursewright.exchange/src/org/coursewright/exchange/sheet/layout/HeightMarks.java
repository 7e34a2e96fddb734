package org.coursewright.exchange.sheet.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

import org.coursewright.exchange.sheet.SheetOpening;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.TopMark;
import org.coursewright.exchange.sheet.page.Anchor;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.measure.Length;

/** Heights beside the elevation: the story pole on the left, sills, heads and tops on the right. */
final class HeightMarks {

    private static final double SIZE = 2.2;
    private static final double PITCH = 2.25;
    private static final double LEADER = 4;
    private static final double GAP = 1.5;
    private static final double BEYOND = 6;

    private final SheetWall wall;
    private final SheetFormat format;
    private final Drawing drawing;

    HeightMarks(SheetWall wall, SheetFormat format, Drawing drawing) {
        this.wall = wall;
        this.format = format;
        this.drawing = drawing;
    }

    /** @return paper it takes to the left of the wall (mm) */
    double left() {
        return LEADER + 2 * GAP + longest(poleHeights()) + drawing.width("000", SIZE);
    }

    /** @return paper it takes to the right of the wall (mm) */
    double right() {
        return LEADER + GAP + longest(List.copyOf(levels().values()));
    }

    /** @return whether the scale leaves room for a mark at every course */
    boolean hasRoomForPole(Projection paper) {
        return polePlaces(paper).isPresent();
    }

    void draw(Projection paper) {
        polePlaces(paper).ifPresent(places -> drawPole(paper, places));
        TreeMap<Length, String> levels = levels();
        double[] wanted = levels.keySet().stream().mapToDouble(paper::y).toArray();
        Spread.of(wanted, PITCH, paper.bottom() - BEYOND, paper.y(wall.highest()) + BEYOND)
                .ifPresent(places -> drawLevels(paper, List.copyOf(levels.values()), wanted, places));
    }

    private Optional<double[]> polePlaces(Projection paper) {
        double[] wanted = LineMarks.onPole(wall).stream().mapToDouble(paper::y).toArray();
        return Spread.of(wanted, PITCH, paper.bottom(), paper.y(LineMarks.onPole(wall).get(wanted.length - 1)) + 2);
    }

    private void drawPole(Projection paper, double[] places) {
        List<String> heights = poleHeights();
        double numbers = paper.x(wall.masonryFrom()) - LEADER - GAP - longest(heights);
        for (int i = 0; i < places.length; i++) {
            double wanted = paper.y(LineMarks.onPole(wall).get(i));
            drawing.line(paper.x(wall.masonryFrom()) - 0.4, wanted, paper.x(wall.masonryFrom()) - LEADER + 0.4,
                    places[i], Pen.HAIR);
            drawing.text(paper.x(wall.masonryFrom()) - LEADER, places[i], heights.get(i), SIZE, Anchor.END);
            drawing.text(numbers, places[i], i == 0 ? "base" : number(i), SIZE, Anchor.END);
        }
    }

    private String number(int index) {
        return String.valueOf(wall.layout().courses().get(index - 1).course().number());
    }

    private void drawLevels(Projection paper, List<String> texts, double[] wanted, double[] places) {
        double x = paper.x(wall.masonryTo());
        IntStream.range(0, places.length).forEach(i -> {
            drawing.line(x + 0.4, wanted[i], x + LEADER - 0.4, places[i], Pen.HAIR);
            drawing.text(x + LEADER, places[i], texts.get(i), SIZE, Anchor.START);
        });
    }

    private List<String> poleHeights() {
        return LineMarks.onPole(wall).stream().map(format::mark).toList();
    }

    private TreeMap<Length, String> levels() {
        TreeMap<Length, TreeSet<String>> words = new TreeMap<>();
        for (SheetOpening opening : wall.openings()) {
            add(words, opening.sill(), "sill");
            add(words, opening.head(), "head");
        }
        for (TopMark top : wall.top()) {
            add(words, top.height(), "top");
        }
        TreeMap<Length, String> levels = new TreeMap<>();
        for (Map.Entry<Length, TreeSet<String>> entry : words.entrySet()) {
            levels.put(entry.getKey(), String.join(", ", entry.getValue()) + " " + format.length(entry.getKey()));
        }
        return levels;
    }

    private static void add(Map<Length, TreeSet<String>> words, Length height, String word) {
        words.computeIfAbsent(height, length -> new TreeSet<>()).add(word);
    }

    private double longest(List<String> texts) {
        return texts.stream().mapToDouble(text -> drawing.width(text, SIZE)).max().orElse(0);
    }
}
