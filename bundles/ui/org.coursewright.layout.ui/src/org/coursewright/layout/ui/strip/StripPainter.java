package org.coursewright.layout.ui.strip;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.layout.ui.paint.FaceInk;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.trial.PlaceCuts;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.osgi.util.NLS;

/**
 * Draws a column for every place: filled where the wall has been laid so, an outline where only the least is known; a mark
 * under the places with the fewest cuts.
 *
 * @param content to draw
 * @param scale where places are
 */
record StripPainter(StripContent content, StripScale scale) {

    private static final int MARK = 4;
    private static final int LEAST_FOR_NUMBER = 16;
    private static final int LINE = 2;
    private static final int GAP = 4;
    private static final int UNDER_MARKS = 8;

    void paint(Graphics graphics) {
        PlaceCuts cuts = scale.cuts();
        cuts.points().forEach(point -> column(graphics, point));
        cuts.best().forEach(point -> mark(graphics, scale.column(point)));
        axis(graphics);
        content.at().filter(scale::contains).ifPresent(at -> {
            int x = scale.x(at);
            graphics.setForegroundColor(ink().basic().accent());
            graphics.setLineWidth(LINE);
            graphics.drawLine(x, scale.area().y, x, scale.area().bottom() + UNDER_MARKS);
            graphics.setLineWidth(1);
        });
    }

    /** The greatest number beside the columns; under them the dimension at both ends and where the opening is. */
    private void axis(Graphics graphics) {
        Rectangle area = scale.area();
        graphics.setForegroundColor(ink().basic().text());
        String most = NLS.bind(StripText.cuts, scale.cuts().mostCuts());
        int width = FigureUtilities.getTextExtents(most, graphics.getFont()).width;
        graphics.drawText(most, area.x - width - GAP, area.y);
        Optional<Rectangle> here = content.at().filter(scale::contains).map(at -> box(graphics, at));
        List<ProfilePoint> points = scale.cuts().points();
        Stream.of(0, points.size() - 1).distinct().map(points::get).map(scale.cuts()::place)
                .filter(end -> here.filter(box(graphics, end).getExpanded(GAP, 0)::intersects).isEmpty())
                .forEach(end -> graphics.drawText(words(end), box(graphics, end).getLocation()));
        graphics.setForegroundColor(ink().basic().accent());
        here.ifPresent(box -> graphics.drawText(words(content.at().orElseThrow()), box.getLocation()));
    }

    /** The pixels of a place's dimension under the columns. */
    private Rectangle box(Graphics graphics, OpeningPlace place) {
        Dimension size = FigureUtilities.getTextExtents(words(place), graphics.getFont());
        Rectangle area = scale.area();
        int middle = scale.x(place);
        int x = Math.max(area.x, Math.min(area.right() - size.width, middle - size.width / 2));
        return new Rectangle(x, area.bottom() + UNDER_MARKS, size.width, size.height);
    }

    private String words(OpeningPlace place) {
        return new StripWords(content).value(scale.cuts(), place);
    }

    private FaceInk ink() {
        return content.ink();
    }

    private void column(Graphics graphics, ProfilePoint point) {
        Rectangle column = scale.column(point);
        boolean trouble = point.unfillable() > 0 || point.lapViolations() > 0;
        int height = point.unfillable() > 0 ? column.height : scale.height(point.cutPieces());
        Rectangle box = new Rectangle(column.x, column.bottom() - height, column.width, height);
        graphics.setForegroundColor(trouble ? ink().basic().warning() : ink().basic().line());
        if (point.basis() != Basis.BOUND) {
            graphics.setBackgroundColor(trouble ? ink().basic().warning() : ink().cut());
            graphics.fillRectangle(box);
        }
        graphics.drawRectangle(box.x, box.y, box.width - 1, Math.max(0, box.height - 1));
        number(graphics, point, column, box);
    }

    private void number(Graphics graphics, ProfilePoint point, Rectangle column, Rectangle box) {
        String number = Integer.toString(point.cutPieces());
        int width = FigureUtilities.getTextExtents(number, graphics.getFont()).width;
        int high = FigureUtilities.getTextExtents(number, graphics.getFont()).height;
        if (column.width >= Math.max(LEAST_FOR_NUMBER, width + 2) && point.unfillable() == 0) {
            graphics.setForegroundColor(ink().basic().text());
            boolean over = box.y - high >= scale.area().y - high;
            graphics.drawText(number, column.x + (column.width - width) / 2, over ? box.y - high : box.y);
        }
    }

    private void mark(Graphics graphics, Rectangle column) {
        int x = column.x + column.width / 2;
        int y = column.bottom() + 2;
        graphics.setBackgroundColor(ink().basic().accent());
        graphics.fillPolygon(new int[]{x, y, x - MARK, y + MARK + 1, x + MARK, y + MARK + 1});
    }
}
