package org.coursewright.layout.ui.plan.part;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.diagram.ui.ink.Ink;
import org.coursewright.diagram.ui.picture.PngFile;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.dimension.DimensionChains;
import org.coursewright.layout.ui.plan.dimension.Figures;
import org.coursewright.layout.ui.plan.paint.DimensionPainting;
import org.coursewright.layout.ui.plan.paint.DimensionRows;
import org.coursewright.layout.ui.plan.paint.JunctionPainting;
import org.coursewright.layout.ui.plan.paint.OpeningPainting;
import org.coursewright.layout.ui.plan.paint.Painting;
import org.coursewright.layout.ui.plan.paint.PlanInk;
import org.coursewright.layout.ui.plan.paint.PlanPicture;
import org.coursewright.layout.ui.plan.paint.PlanPlace;
import org.coursewright.layout.ui.plan.paint.SlantedText;
import org.coursewright.layout.ui.plan.paint.WallMarks;
import org.coursewright.layout.ui.plan.paint.WallPainting;
import org.coursewright.layout.ui.plan.shape.PlanBounds;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Marked;
import org.eclipse.draw2d.geometry.Rectangle;

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

    private PlanPlace place(PlanBounds box) {
        Length side = box.width().isGreaterThan(box.depth()) ? box.width() : box.depth();
        double fitting = DiagramScale.fitting(side, PngFile.LONGEST_SIDE - STRINGS).zoom();
        return PlanPlace.of(new DiagramScale(Math.min(WANTED, fitting)), box.southWest(), state.lettering());
    }

    /**
     * @param scale pixels of lengths
     * @return the pixels that everything covers with its dimension strings, the plan's origin being at (0, 0); empty if
     *         there is no wall
     */
    public Optional<Rectangle> bounds(DiagramScale scale) {
        return paintings(new PlanPlace(scale, 0, 0, state.lettering())).stream().map(Painting::bounds)
                .filter(box -> !box.isEmpty()).reduce((a, b) -> a.getCopy().union(b));
    }

    private List<Painting> paintings(PlanPlace place) {
        PlanInk ink = PlanInk.with(Ink.LIGHT);
        List<Painting> all = new ArrayList<>();
        List<Dimension> dimensions = new DimensionChains(state.shape()).outside();
        Wording wording = wording(dimensions, place);
        state.shape().walls().values().forEach(wall -> all.add(new WallPainting(wall, place, ink,
                Optional.ofNullable(wording.marks().get(wall.wall())), Optional.empty(), false)));
        openings(place, ink).forEach(all::add);
        all.add(new JunctionPainting(state.shape(), state.laid(), place, ink));
        dimensions.forEach(each -> all.add(
                new DimensionPainting(each, text(each), wording.rows().get(each), place, ink, false)));
        return all;
    }

    /**
     * @param dimensions to be drawn
     * @param place of the plan on paper
     * @return where their words and the marks of walls are
     */
    public Wording wording(Collection<Dimension> dimensions, PlanPlace place) {
        PlanInk ink = PlanInk.with(Ink.LIGHT);
        Collection<WallShape> walls = state.shape().walls().values();
        List<Rectangle> words = new ArrayList<>();
        openings(place, ink).forEach(opening -> words.add(opening.words()));
        Map<Wall, SlantedText> marks = WallMarks.of(walls, place, words);
        marks.values().forEach(mark -> words.add(mark.bounds()));
        return new Wording(marks, DimensionRows.of(List.copyOf(dimensions), this::text, place, ink, walls, words));
    }

    private String text(Dimension dimension) {
        return new Figures(state.format()).of(dimension);
    }

    private Stream<OpeningPainting> openings(PlanPlace place, PlanInk ink) {
        return state.shape().walls().values().stream().flatMap(wall -> wall.wall().getOpenings().stream()
                .map(opening -> new OpeningPainting(wall, opening.getOffset(), opening.getWidth(), opening.getKind(),
                        mark(opening), isMarkLeft(wall), place, ink, Optional.empty(), false)));
    }

    private boolean isMarkLeft(WallShape wall) {
        return !state.measuredLeft().contains(wall.wall());
    }

    private static String mark(Marked element) {
        return element.getMark() == null ? "" : element.getMark();
    }
}
