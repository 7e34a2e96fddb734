package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.awt.Polygon;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.paint.DimensionPainting;
import org.coursewright.layout.ui.plan.paint.OpeningPainting;
import org.coursewright.layout.ui.plan.paint.PaintedFigure;
import org.coursewright.layout.ui.plan.paint.Painting;
import org.coursewright.layout.ui.plan.paint.SlantedText;
import org.coursewright.layout.ui.plan.paint.WallPainting;
import org.coursewright.layout.ui.plan.part.DimensionPart;
import org.coursewright.layout.ui.plan.part.PlanOpeningPart;
import org.coursewright.layout.ui.plan.part.PlanWallPart;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.model.building.Wall;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalEditPart;
import org.junit.jupiter.api.Test;

/** The words in the plan of the demo building, at several scales: none lies on a wall or on other words. */
class PlanMarksTest extends OnDemoPlan {

    private static final List<Double> SHARES = List.of(2.0, 1.0, 0.8, 0.6, 0.4, 0.2, 0.1);

    @Test
    void noMarkLiesOnAnotherWall() {
        atEachScale(() -> marks().forEach((mark, own) -> plan.editor().state().shape().walls().values().stream()
                .filter(wall -> wall.wall() != own).forEach(wall -> assertFalse(isOn(mark.bounds(), wall),
                        () -> mark.words() + " lies on " + wall.wall().getMark() + " at " + scale()))));
    }

    @Test
    void noWordsLieOnOthers() {
        atEachScale(() -> {
            List<Rectangle> boxes = new ArrayList<>();
            marks().keySet().forEach(mark -> keepApart(boxes, mark.bounds(), mark.words()));
            plan.dimensions().stream().map(DimensionPart::painting).flatMap(Optional::stream)
                    .filter(DimensionPainting::isLegible)
                    .forEach(dimension -> keepApart(boxes, dimension.textPlace(), dimension.text()));
        });
    }

    @Test
    void allMarksAreThereAtTheScaleAtWhichThePlanOpens() {
        assertEquals(14 + 12, marks().size());
    }

    private void atEachScale(Runnable check) {
        double opened = DiagramScale.zoom(plan.viewer()).getZoom();
        for (double share : SHARES) {
            DiagramScale.zoom(plan.viewer()).setZoom(opened * share);
            OpenPlan.settle();
            check.run();
        }
    }

    private double scale() {
        return DiagramScale.of(plan.viewer()).zoom();
    }

    private void keepApart(List<Rectangle> boxes, Rectangle box, String words) {
        assertFalse(boxes.stream().anyMatch(box::intersects), () -> words + " lies on other words at " + scale());
        boxes.add(box);
    }

    private boolean isOn(Rectangle box, WallShape wall) {
        PointList outline = plan.editor().state().place(DiagramScale.of(plan.viewer())).pixels(wall.outline());
        Polygon polygon = new Polygon();
        for (int i = 0; i < outline.size(); i++) {
            polygon.addPoint(outline.getPoint(i).x, outline.getPoint(i).y);
        }
        return polygon.intersects(box.x, box.y, box.width, box.height);
    }

    /** With the walls that they belong to. */
    private Map<SlantedText, Wall> marks() {
        Map<SlantedText, Wall> found = new LinkedHashMap<>();
        for (EditPart part : plan.storeyPart().childParts()) {
            if (part instanceof PlanWallPart wall && painted(wall) instanceof WallPainting painting) {
                painting.mark().ifPresent(mark -> found.put(mark, wall.element()));
            } else if (part instanceof PlanOpeningPart opening
                    && painted(opening) instanceof OpeningPainting painting) {
                painting.mark().ifPresent(mark -> found.put(mark, painting.wall().wall()));
            }
        }
        return found;
    }

    private static Painting painted(GraphicalEditPart part) {
        return ((PaintedFigure) part.getFigure()).painting().orElseThrow();
    }
}
