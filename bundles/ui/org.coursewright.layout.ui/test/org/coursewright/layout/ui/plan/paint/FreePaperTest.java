package org.coursewright.layout.ui.plan.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Polygon;
import java.awt.geom.Area;
import java.util.List;
import java.util.Random;

import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.junit.jupiter.api.Test;

class FreePaperTest {

    /** From (10, 10) to (110, 20). */
    private static final PointList LEVEL = new PointList(new int[]{10, 10, 110, 10, 110, 20, 10, 20});
    /** Rises by 45 degrees from the lower left to the upper right. */
    private static final PointList SLANTED = new PointList(new int[]{0, 90, 90, 0, 100, 10, 10, 100});

    private final FreePaper level = new FreePaper(List.of(LEVEL), List.of());
    private final FreePaper slanted = new FreePaper(List.of(SLANTED), List.of());

    @Test
    void besideAWallIsFree() {
        assertThat(level.isFree(new Rectangle(40, 21, 20, 14))).isTrue();
        assertThat(level.isFree(new Rectangle(111, 8, 20, 14))).isTrue();
    }

    @Test
    void acrossAWallIsNot() {
        assertThat(level.isFree(new Rectangle(40, 0, 20, 40))).isFalse();
        assertThat(level.isFree(new Rectangle(100, 15, 20, 14))).isFalse();
    }

    @Test
    void insideAWallIsNot() {
        assertThat(level.isFree(new Rectangle(40, 12, 20, 6))).isFalse();
    }

    @Test
    void aroundAShortWallIsNot() {
        assertThat(level.isFree(new Rectangle(0, 0, 200, 100))).isFalse();
    }

    @Test
    void cornersOfTheBoxAroundASlantedWallAreFree() {
        assertThat(slanted.isFree(new Rectangle(0, 0, 30, 30))).isTrue();
        assertThat(slanted.isFree(new Rectangle(70, 70, 30, 30))).isTrue();
        assertThat(slanted.isFree(new Rectangle(35, 35, 30, 30))).isFalse();
    }

    @Test
    void wordsKeepOtherWordsAway() {
        level.take(new Rectangle(40, 30, 20, 14));

        assertThat(level.isFree(new Rectangle(50, 40, 20, 14))).isFalse();
        assertThat(level.isWritten(new Rectangle(50, 40, 20, 14))).isTrue();
        assertThat(level.isFree(new Rectangle(60, 30, 20, 14))).isTrue();
        assertThat(level.words()).containsExactly(new Rectangle(40, 30, 20, 14));
    }

    /** The areas of the Java class library are the outside check; a pixel may be counted to either side of a line. */
    @Test
    void whatIsFreeSharesNoAreaWithMasonry() {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            PointList wall = wall(random);
            Rectangle box = new Rectangle(random.nextInt(100), random.nextInt(100), 4 + random.nextInt(40), 14);
            boolean free = new FreePaper(List.of(wall), List.of()).isFree(box);

            assertThat(free && shares(wall, box.getExpanded(-1, -1))).as("%s on %s", box, wall.toIntArray()).isFalse();
            assertThat(!free && !shares(wall, box.getExpanded(2, 2))).as("%s off %s", box, wall.toIntArray()).isFalse();
        }
    }

    private static PointList wall(Random random) {
        int x = random.nextInt(120);
        int y = random.nextInt(120);
        double angle = random.nextDouble() * 2 * Math.PI;
        int length = 20 + random.nextInt(80);
        int thick = 3 + random.nextInt(12);
        int alongX = (int) Math.round(length * Math.cos(angle));
        int alongY = (int) Math.round(length * Math.sin(angle));
        int acrossX = (int) Math.round(-thick * Math.sin(angle));
        int acrossY = (int) Math.round(thick * Math.cos(angle));
        return new PointList(new int[]{x, y, x + alongX, y + alongY, x + alongX + acrossX, y + alongY + acrossY,
                x + acrossX, y + acrossY});
    }

    private static boolean shares(PointList wall, Rectangle box) {
        Polygon polygon = new Polygon();
        for (int i = 0; i < wall.size(); i++) {
            polygon.addPoint(wall.getPoint(i).x, wall.getPoint(i).y);
        }
        Area area = new Area(polygon);
        area.intersect(new Area(new java.awt.Rectangle(box.x, box.y, box.width, box.height)));
        return !area.isEmpty();
    }
}
