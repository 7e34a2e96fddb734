package org.coursewright.layout.ui.plan.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.PlanSample;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Marked;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.junit.jupiter.api.Test;

/** Letters are 8 pixels wide and 14 high here; at zoom 1, 12.7 pixels are an inch. */
class MarksTest {

    private static final double WIDE = 0.4;
    private static final double CLOSE = 0.1;
    /** Walls are thinner than letters are high. */
    private static final double THIN = 0.06;
    private static final double SMALL = 0.01;

    private final PlanSample sample = PlanSample.room();

    /** Nothing is painted here, so there is no font. */
    private static PlanPlace place(double zoom) {
        return new PlanPlace(new DiagramScale(zoom), 0, 0,
                new Lettering(null, words -> new Dimension(8 * words.length(), 14)));
    }

    private Collection<WallShape> walls() {
        return sample.shape().walls().values();
    }

    private List<PointList> outlines(PlanPlace place) {
        return walls().stream().map(wall -> place.pixels(wall.outline())).toList();
    }

    private FreePaper paper(PlanPlace place, Rectangle... lines) {
        return new FreePaper(outlines(place), List.of(lines));
    }

    private Map<Opening, SlantedText> openingMarks(double zoom) {
        return openingMarks(zoom, true, false);
    }

    private Map<Opening, SlantedText> openingMarks(double zoom, Boolean... sides) {
        PlanPlace place = place(zoom);
        return new OpeningMarks(place, wall -> List.of(sides)).on(paper(place), walls());
    }

    private Map<Marked, SlantedText> allMarks(double zoom) {
        PlanPlace place = place(zoom);
        FreePaper paper = paper(place);
        Map<Marked, SlantedText> marks = new HashMap<>(
                new OpeningMarks(place, wall -> List.of(true, false)).on(paper, walls()));
        marks.putAll(new WallMarks(place).on(paper, walls()));
        return marks;
    }

    @Test
    void markStandsOppositeItsOpeningWhereNothingIsInTheWay() {
        Opening door = PlanSample.door(sample.wall("W1"), "D1", 80, 36);

        SlantedText mark = openingMarks(WIDE).get(door);

        assertThat(mark.words()).isEqualTo("D1");
        assertThat(mark.centre().x).isEqualTo(place(WIDE).pixel(PlanSample.at(93, 0)).x);
        assertThat(mark.bounds().bottom()).isLessThan(place(WIDE).pixel(PlanSample.at(0, 5)).y);
    }

    @Test
    void markStepsAsideForAWallThatEndsBesideItsOpening() {
        sample.wall("P1", 80, 0, 80, 150);
        Opening vent = PlanSample.door(sample.wall("W1"), "V1", 90, 10);

        SlantedText mark = openingMarks(CLOSE).get(vent);

        assertThat(mark.centre().x).isGreaterThan(place(CLOSE).pixel(PlanSample.at(90, 0)).x);
        assertThat(mark.bounds().bottom()).as("on the same side").isLessThan(0);
        assertThat(paper(place(CLOSE)).isFree(mark.bounds())).isTrue();
    }

    @Test
    void markGoesToTheOtherSideWhereAWallIsCloseAlongside() {
        sample.wall("P1", 20, 22, 180, 22);
        Opening door = PlanSample.door(sample.wall("W1"), "D1", 80, 36);

        SlantedText mark = openingMarks(CLOSE).get(door);

        assertThat(mark.bounds().y).isGreaterThan(0);
        assertThat(openingMarks(CLOSE, true)).as("no other side is allowed").doesNotContainKey(door);
    }

    @Test
    void markIsLeftOutWhereThereIsNoRoom() {
        sample.wall("P1", 0, 22, 200, 22);
        sample.wall("P2", 0, -22, 200, -22);
        Opening door = PlanSample.door(sample.wall("W1"), "D1", 80, 36);

        assertThat(openingMarks(CLOSE)).doesNotContainKey(door);
    }

    @Test
    void markOfAWallKeepsOffLinesIfItCan() {
        PlanPlace place = place(THIN);
        SlantedText before = new WallMarks(place).on(paper(place), walls()).get(sample.wall("W1"));
        Rectangle line = new Rectangle(before.centre().x, before.centre().y - 20, 1, 40);

        SlantedText mark = new WallMarks(place).on(paper(place, line), walls()).get(sample.wall("W1"));

        assertThat(mark.bounds().intersects(line)).isFalse();
    }

    @Test
    void markOfAWallLiesOnALineRatherThanNowhere() {
        PlanPlace place = place(THIN);
        Rectangle everywhere = new Rectangle(-1000, -1000, 2000, 2000);

        assertThat(new WallMarks(place).on(paper(place, everywhere), walls())).hasSize(4);
    }

    @Test
    void openingWithoutAMarkHasNone() {
        PlanSample.door(sample.wall("W1"), null, 80, 36);

        assertThat(openingMarks(WIDE)).isEmpty();
    }

    @Test
    void atNoScaleDoMarksLieOnOneAnother() {
        List.of("W1", "W2", "W3", "W4").forEach(wall -> rowOfDoors(sample.wall(wall)));

        for (double zoom = SMALL; zoom < 1; zoom *= 1.3) {
            List<Rectangle> boxes = new ArrayList<>();
            allMarks(zoom).values().forEach(mark -> {
                assertThat(boxes).noneMatch(mark.bounds()::intersects);
                boxes.add(mark.bounds());
            });
            assertThat(boxes).isNotEmpty();
        }
    }

    @Test
    void atALargeScaleEverythingHasItsMark() {
        List.of("W1", "W2", "W3", "W4").forEach(wall -> rowOfDoors(sample.wall(wall)));

        assertThat(allMarks(WIDE)).hasSize(4 + 4 * 4);
    }

    private static void rowOfDoors(Wall wall) {
        for (int i = 0; i < 4; i++) {
            PlanSample.door(wall, wall.getMark() + i, 20 + 28 * i, 20);
        }
    }
}
