package org.coursewright.layout.ui.plan.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.diagram.ui.ink.Ink;
import org.coursewright.diagram.ui.picture.PngFile;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.dimension.DimensionChains;
import org.coursewright.layout.ui.plan.paint.DimensionPainting;
import org.coursewright.layout.ui.plan.paint.JunctionPainting;
import org.coursewright.layout.ui.plan.paint.OpeningPainting;
import org.coursewright.layout.ui.plan.paint.Painting;
import org.coursewright.layout.ui.plan.paint.PlanInk;
import org.coursewright.layout.ui.plan.paint.PlanPicture;
import org.coursewright.layout.ui.plan.paint.PlanPlace;
import org.coursewright.layout.ui.plan.paint.WallPainting;
import org.coursewright.layout.ui.plan.shape.PlanBounds;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;

/**
 * The whole of a storey on white paper, with the dimension strings outside.
 *
 * @param state of the plan
 */
public record StoreyPaintings(PlanState state) {

    /** At this scale a pixel is 5 mm, so that all dimensions but the shortest can be read. */
    private static final double WANTED = 0.4;
    private static final int STRINGS = 200;

    /** @return the picture, empty if there is no wall */
    public Optional<PlanPicture> picture() {
        return state.shape().bounds().map(box -> new PlanPicture(paintings(place(box)), Ink.LIGHT.paper()));
    }

    private static PlanPlace place(PlanBounds box) {
        Length side = box.width().isGreaterThan(box.depth()) ? box.width() : box.depth();
        double fitting = DiagramScale.fitting(side, PngFile.LONGEST_SIDE - STRINGS).zoom();
        return PlanPlace.of(new DiagramScale(Math.min(WANTED, fitting)), box.southWest());
    }

    private List<Painting> paintings(PlanPlace place) {
        PlanInk ink = PlanInk.with(Ink.LIGHT);
        List<Painting> all = new ArrayList<>();
        state.shape().walls().values().forEach(wall -> all.add(new WallPainting(wall, place, ink, mark(wall),
                Optional.empty(), false)));
        state.shape().walls().values().forEach(wall -> wall.wall().getOpenings().forEach(
                opening -> all.add(opening(wall, opening, place, ink))));
        all.add(new JunctionPainting(state.shape(), place, ink));
        new DimensionChains(state.shape()).outside().forEach(each -> all.add(
                new DimensionPainting(each, state.format().format(each.length()), place, ink, false)));
        return all;
    }

    private OpeningPainting opening(WallShape wall, Opening opening, PlanPlace place, PlanInk ink) {
        return new OpeningPainting(wall, opening.getOffset(), opening.getWidth(), opening.getKind(),
                opening.getMark() == null ? "" : opening.getMark(),
                !new DimensionChains(state.shape()).isLeft(wall), place, ink, Optional.empty(), false);
    }

    private static String mark(WallShape wall) {
        return wall.wall().getMark() == null ? "" : wall.wall().getMark();
    }
}
