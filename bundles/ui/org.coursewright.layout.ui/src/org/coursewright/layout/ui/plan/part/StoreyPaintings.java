package org.coursewright.layout.ui.plan.part;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.diagram.ui.ink.Ink;
import org.coursewright.diagram.ui.picture.PngFile;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.dimension.Figures;
import org.coursewright.layout.ui.plan.paint.DimensionPainting;
import org.coursewright.layout.ui.plan.paint.DimensionRow;
import org.coursewright.layout.ui.plan.paint.DimensionRows;
import org.coursewright.layout.ui.plan.paint.FreePaper;
import org.coursewright.layout.ui.plan.paint.JunctionPainting;
import org.coursewright.layout.ui.plan.paint.OpeningMarks;
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
        List<Dimension> dimensions = state.outside();
        Wording wording = wording(dimensions, place);
        state.shape().walls().values().forEach(wall -> all.add(new WallPainting(wall, place, ink,
                Optional.ofNullable(wording.marks().get(wall.wall())), Optional.empty(), false)));
        openings(wording.marks(), place, ink).forEach(all::add);
        all.add(new JunctionPainting(state.shape(), state.laid(), place, ink));
        dimensions.forEach(each -> all.add(
                new DimensionPainting(each, text(each), wording.rows().get(each), place, ink, wording.words(),
                        false)));
        return all;
    }

    /**
     * @param dimensions to be drawn
     * @param place of the plan on paper
     * @return where their words and the marks of walls are
     */
    public Wording wording(Collection<Dimension> dimensions, PlanPlace place) {
        Collection<WallShape> walls = state.shape().walls().values();
        FreePaper paper = new FreePaper(walls.stream().map(wall -> place.pixels(wall.outline())).toList(),
                state.outside().stream().flatMap(each -> lines(each, place)).toList());
        Set<Wall> measured = state.outside().stream().map(Dimension::wall).collect(Collectors.toSet());
        Map<Marked, SlantedText> marks = new HashMap<>(
                new OpeningMarks(place, wall -> sides(wall, measured)).on(paper, walls));
        marks.putAll(new WallMarks(place).on(paper, walls));
        return new Wording(marks, DimensionRows.of(List.copyOf(dimensions), this::text, place,
                PlanInk.with(Ink.LIGHT), walls, paper.words()), paper.words());
    }

    /** Lines from the face towards the string, as far as it usually is. */
    private static Stream<Rectangle> lines(Dimension dimension, PlanPlace place) {
        return Stream.of(dimension.from(), dimension.to()).map(place::pixel).map(face -> new Rectangle(face,
                PlanPlace.ahead(face, dimension.away(), DimensionRow.USUAL)));
    }

    /** Where a wall has its strings is no place for marks of openings: the lines from their jambs are there. */
    private List<Boolean> sides(WallShape wall, Set<Wall> measured) {
        boolean inside = state.isInsideLeft(wall);
        return measured.contains(wall.wall()) ? List.of(inside) : List.of(inside, !inside);
    }

    private String text(Dimension dimension) {
        return new Figures(state.format()).of(dimension);
    }

    private Stream<OpeningPainting> openings(Map<Marked, SlantedText> marks, PlanPlace place, PlanInk ink) {
        return state.shape().walls().values().stream().flatMap(wall -> wall.wall().getOpenings().stream()
                .map(opening -> new OpeningPainting(wall, opening.getOffset(), opening.getWidth(), opening.getKind(),
                        Optional.ofNullable(marks.get(opening)), state.isInsideLeft(wall), place, ink,
                        Optional.empty(), false)));
    }
}
