package org.coursewright.core.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.core.PlanBuilder.in;

import java.util.List;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Levels;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.core.PlanBuilder;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Wall;
import org.junit.jupiter.api.Test;

/** Walls on a stepped grade beam, and walls of different heights, at their corner. */
class SteppedBaseLayoutTest {

    private final PlanBuilder plan = new PlanBuilder();

    private LayoutOutcome lay() {
        return new BuildingLayout(BondSolver.standard()).lay(plan.project(), Progress.NONE);
    }

    private static List<Run> lastRuns(WallLayout wall) {
        return wall.courses().stream().map(course -> course.runs().get(course.runs().size() - 1)).toList();
    }

    /**
     * Courses of 4 1/2 in. W1 stands on the benchmark and has 6 courses; W2 stands 9 in higher, in courses 3 to 8 of the
     * building. W1 reaches its outer end in courses 1 and 2, where nothing stands beside it, and in every second one above.
     */
    @Test
    void wallOnAHigherBaseKeepsStepAndTheLowerOneFillsTheCornerBelow() {
        plan.wall("W1", "0", "0", "232", "0", Bond.STRETCHER, "27");
        Wall high = plan.wall("W2", "232", "0", "232", "232", Bond.STRETCHER, "27");
        high.setBase(in("9"));

        LayoutOutcome outcome = lay();

        WallFace low = outcome.faces().get(0);
        assertThat(low.end()).isInstanceOfSatisfying(WallEnd.Corner.class,
                corner -> assertThat(corner.beside()).isEqualTo(new Levels(3, 8)));
        List<Run> ends = lastRuns(outcome.result().walls().get(0));
        assertThat(ends).extracting(Run::endsWith).startsWith(RunEnd.FACE, RunEnd.FACE);
        assertThat(ends.subList(2, 6)).extracting(Run::endsWith).containsOnly(RunEnd.FACE, RunEnd.JOINT);
        assertThat(ends).filteredOn(run -> run.endsWith() == RunEnd.JOINT).hasSize(2)
                .allSatisfy(run -> assertThat(run.to()).isEqualTo(low.length().minus(in("10"))));
    }

    /** Above the lower wall's top nothing stands beside the higher one, so it goes to its outer end in every course. */
    @Test
    void higherWallFillsTheCornerAboveTheLowerOne() {
        plan.wall("W1", "0", "0", "232", "0", Bond.STRETCHER, "45");
        plan.wall("W2", "232", "0", "232", "232", Bond.STRETCHER, "27");

        WallLayout wall = lay().result().walls().get(0);

        assertThat(lastRuns(wall).subList(6, 10)).allSatisfy(run -> {
            assertThat(run.endsWith()).isEqualTo(RunEnd.FACE);
            assertThat(run.to()).isEqualTo(wall.courses().get(6).course().to());
        });
    }

    /** A partition that rises above the wall it is tied to ends in the open there. */
    @Test
    void partitionEndsInTheOpenAboveTheWallItIsTiedTo() {
        plan.wall("W1", "0", "0", "240", "0", Bond.STRETCHER, "27");
        plan.wall("P1", "120", "0", "120", "160", Bond.STRETCHER, "45");

        WallLayout partition = lay().result().walls().get(1);

        assertThat(partition.courses()).extracting(course -> course.runs().get(0).startsWith()).startsWith(RunEnd.JOINT)
                .endsWith(RunEnd.FACE, RunEnd.FACE, RunEnd.FACE, RunEnd.FACE)
                .filteredOn(RunEnd.JOINT::equals).hasSize(6);
    }
}
