package org.coursewright.layout.ui.plan.paint;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.draw2d.geometry.Geometry;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;

/** Paper with walls and words on it: knows where more words may stand without lying on either. */
public final class FreePaper {

    private final List<PointList> masonry;
    private final List<Rectangle> lines;
    private final List<Rectangle> words = new ArrayList<>();

    /**
     * @param masonry outlines of the walls, in pixels
     * @param lines boxes around lines that words should lie on only if there is no other place for them, in pixels
     */
    public FreePaper(Collection<PointList> masonry, Collection<Rectangle> lines) {
        this.masonry = List.copyOf(masonry);
        this.lines = List.copyOf(lines);
    }

    /**
     * @param tried gives places for the same words, the best first, as often as asked
     * @return the first that lies neither on masonry nor on words, and if there is such a one, on no line either; it is
     *         taken then. Empty if there is none
     */
    Optional<SlantedText> claim(Supplier<Stream<SlantedText>> tried) {
        Optional<SlantedText> found = tried.get().filter(each -> isFree(each.bounds()) && !isCrossed(each.bounds()))
                .findFirst().or(() -> tried.get().filter(each -> isFree(each.bounds())).findFirst());
        found.ifPresent(each -> take(each.bounds()));
        return found;
    }

    /**
     * @param box in pixels
     * @return whether neither masonry nor words are in it
     */
    public boolean isFree(Rectangle box) {
        return !isWritten(box) && masonry.stream().noneMatch(outline -> isOn(box, outline));
    }

    private boolean isCrossed(Rectangle box) {
        return lines.stream().anyMatch(box::intersects);
    }

    /**
     * @param box in pixels
     * @return whether words are in it
     */
    public boolean isWritten(Rectangle box) {
        return words.stream().anyMatch(box::intersects);
    }

    /** @param box around words that are written, in pixels */
    public void take(Rectangle box) {
        words.add(box);
    }

    /** @return the boxes around all words that are written */
    public List<Rectangle> words() {
        return List.copyOf(words);
    }

    /** One holds a point of the other, or a side of the outline crosses the box. */
    private static boolean isOn(Rectangle box, PointList outline) {
        return box.intersects(outline.getBounds())
                && (PolygonHit.isIn(outline, box.x, box.y)
                        || IntStream.range(0, outline.size()).anyMatch(i -> crosses(box, outline, i)));
    }

    private static boolean crosses(Rectangle box, PointList outline, int side) {
        Point from = outline.getPoint(side);
        Point to = outline.getPoint((side + 1) % outline.size());
        return box.contains(from) || cuts(box.getTopLeft(), box.getBottomRight(), from, to)
                || cuts(box.getTopRight(), box.getBottomLeft(), from, to);
    }

    /** A line that passes through a box meets one of its diagonals. */
    private static boolean cuts(Point one, Point other, Point from, Point to) {
        return Geometry.linesIntersect(one.x, one.y, other.x, other.y, from.x, from.y, to.x, to.y);
    }
}
