package org.coursewright.exchange.sheet.layout;

import org.coursewright.exchange.sheet.SheetSettings;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.page.Area;
import org.coursewright.exchange.sheet.page.TextMeasure;

/** The first page: elevation on top, first course under it, title block in the corner, tables in what is left. */
final class FirstPage {

    private static final double HEAD = 9;
    private static final double PADDING = 4;

    private final SheetWall wall;
    private final Paper paper;
    private final Drawing drawing;
    private final ElevationParts parts;
    private final TitleBlock title;

    /** The drawing, where it is still free, and which marks found no room. */
    record Drawn(Drawing drawing, Area free, boolean lacksPole, boolean lacksLine) {
    }

    /** What stands around the elevation. */
    private record ElevationParts(HeightMarks heights, BottomDimensions dimensions, PlanStrip plan,
            SheetFormat format) {
    }

    FirstPage(SheetWall wall, SheetSettings settings, SheetFormat format, Paper paper, TextMeasure measure) {
        this.wall = wall;
        this.paper = paper;
        this.drawing = new Drawing(measure);
        this.parts = new ElevationParts(new HeightMarks(wall, format, drawing),
                new BottomDimensions(wall, format, drawing),
                new PlanStrip(wall, format, drawing, settings.lineOffset()), format);
        this.title = new TitleBlock(wall, format, settings, measure);
    }

    boolean fits(int scale) {
        double width = Projection.size(wall.masonryTo().minus(wall.masonryFrom()), scale) + parts.heights().left()
                + parts.heights().right();
        return width + 2 * PADDING <= paper.inner().width()
                && drawingsHeight(scale) + title.height(scale) + PADDING <= paper.inner().height();
    }

    Drawn draw(int scale) {
        Area inner = paper.inner();
        double left = inner.x() + PADDING + parts.heights().left() - Projection.size(wall.masonryFrom(), scale);
        double base = inner.top() - HEAD - Projection.size(wall.highest(), scale);
        Projection elevation = new Projection(left, base, scale);
        drawing.strong(left, inner.top() - HEAD / 2 + 1, "Elevation %s".formatted(Scales.describe(scale, parts.format()
                .unit())), BottomDimensions.SIZE);
        new ElevationView(wall, parts.format(), elevation, drawing).draw();
        parts.heights().draw(elevation);
        parts.dimensions().draw(elevation);
        parts.plan().draw(elevation, base - parts.dimensions().depth());
        double titleHeight = title.height(scale);
        title.draw(drawing, new Area(inner.right() - TitleBlock.WIDTH, inner.y(), TitleBlock.WIDTH, titleHeight),
                scale);
        return new Drawn(drawing, free(inner, scale), !parts.heights().hasRoomForPole(elevation),
                !parts.plan().hasRoom(elevation));
    }

    private Area free(Area inner, int scale) {
        double height = inner.height() - drawingsHeight(scale) - PADDING;
        return new Area(inner.x() + PADDING, inner.y() + PADDING / 2, inner.width() - TitleBlock.WIDTH - 2 * PADDING,
                height);
    }

    private double drawingsHeight(int scale) {
        return HEAD + Projection.size(wall.highest(), scale) + parts.dimensions().depth()
                + parts.plan().height(scale);
    }
}
