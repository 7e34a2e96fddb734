package org.coursewright.layout.ui.chain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.coursewright.bond.BondSolver;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.plan.PlanSample;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

class WallChainTest {

    private static LayoutOutcome lay(PlanSample plan) {
        return new BuildingLayout(BondSolver.standard()).lay(plan.project, Progress.NONE);
    }

    private static List<String> marks(List<ChainLink> links) {
        return links.stream().map(link -> link.wall().getMark()).toList();
    }

    @Test
    void roomIsUnfoldedOnceRound() {
        PlanSample room = PlanSample.room();
        List<ChainLink> links = WallChain.of(room.wall("W2"), lay(room));

        assertThat(marks(links)).containsExactly("W3", "W4", "W1");
        assertThat(links).extracting(ChainLink::left).isSorted().allSatisfy(
                left -> assertThat(left).isGreaterThan(Length.ofInches(150)));
    }

    @Test
    void openRowGoesOnToBothSides() {
        PlanSample row = new PlanSample();
        row.wall("W1", 0, 100, 0, 0);
        row.wall("W2", 0, 0, 200, 0);
        row.wall("W3", 200, 0, 200, 100);
        List<ChainLink> links = WallChain.of(row.wall("W2"), lay(row));

        assertThat(marks(links)).containsExactly("W3", "W1");
        assertThat(links.get(1).right()).isLessThan(Length.ZERO);
        ChainExtent extent = ChainExtent.of(FaceDrawing.of(row.wall("W2"), lay(row)).orElseThrow(), links);
        assertThat(extent.before()).isEqualTo(links.get(1).left().negated());
        assertThat(extent.after()).isEqualTo(links.get(0).right());
    }

    @Test
    void wallDrawnTheOtherWayIsTurned() {
        PlanSample asDrawn = new PlanSample();
        asDrawn.wall("W1", 0, 0, 200, 0);
        asDrawn.wall("W2", 200, 0, 200, 150);
        PlanSample turned = new PlanSample();
        turned.wall("W1", 0, 0, 200, 0);
        turned.wall("W2", 200, 150, 200, 0);
        PlanSample.door(asDrawn.wall("W2"), "D1", 20, 40);
        PlanSample.door(turned.wall("W2"), "D1", 95, 40);

        FaceDrawing one = WallChain.of(asDrawn.wall("W1"), lay(asDrawn)).get(0).drawing();
        FaceDrawing other = WallChain.of(turned.wall("W1"), lay(turned)).get(0).drawing();
        assertThat(other.face().length()).isEqualTo(one.face().length());
        assertThat(other.face().obstacles()).isEqualTo(one.face().obstacles());
        assertThat(other.corners().start()).isPresent();
        assertThat(other.count().total()).isEqualTo(pieces(other).size());
    }

    @Test
    void wallTurnedTwiceIsAsItWas() {
        PlanSample room = PlanSample.room();
        PlanSample.door(room.wall("W1"), "D1", 33, 40);
        FaceDrawing drawing = FaceDrawing.of(room.wall("W1"), lay(room)).orElseThrow();
        FaceDrawing twice = MirroredDrawing.of(MirroredDrawing.of(drawing));

        assertThat(twice.layout()).isEqualTo(drawing.layout());
        assertThat(twice.face()).isEqualTo(drawing.face());
        assertThat(twice.courses()).isEqualTo(drawing.courses());
    }

    @Test
    void piecesOfATurnedWallKeepTheirDistanceFromTheOtherEnd() {
        PlanSample room = PlanSample.room();
        FaceDrawing drawing = FaceDrawing.of(room.wall("W1"), lay(room)).orElseThrow();
        FaceCourse course = drawing.courses().get(2);
        FaceCourse turned = MirroredDrawing.of(drawing).courses().get(2);

        PlacedPiece first = course.pieces().get(0);
        PlacedPiece last = turned.pieces().get(turned.pieces().size() - 1);
        assertThat(drawing.face().length().minus(last.to()).minus(first.from()).abs())
                .as("to the rounding of joints").isLessThanOrEqualTo(Length.ofUnits(1));
    }

    private static List<PlacedPiece> pieces(FaceDrawing drawing) {
        return drawing.courses().stream().flatMap(course -> course.pieces().stream()).toList();
    }
}
