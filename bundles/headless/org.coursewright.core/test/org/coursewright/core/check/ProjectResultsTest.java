package org.coursewright.core.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.coursewright.bond.Effort;
import org.coursewright.core.PlanBuilder;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.LayoutResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.finding.Finding;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.junit.jupiter.api.Test;

class ProjectResultsTest {

    private final PlanBuilder plan = new PlanBuilder();

    @Test
    void emptyProjectIsToldThatItHasNoWalls() {
        assertThat(check()).extracting(Finding::code).containsExactly("project.no-walls");
    }

    @Test
    void sameMarkOnTwoOpeningsIsToldOnce() {
        Wall wall = plan.wall("W1", "0", "0", "240", "0");
        plan.opening(wall, "O1", "29", "30", "27", "45");
        plan.opening(wall, "o1 ", "101 1/2", "30", "27", "45");

        assertThat(check()).filteredOn(finding -> finding.code().equals("opening.duplicate-mark")).hasSize(1);
    }

    @Test
    void resultsFollowAnEditAndStayWhereNothingChanged() {
        Wall wall = plan.wall("W1", "0", "0", "240", "0");
        Opening opening = plan.opening(wall, "O1", "29", "30", "27", "45");
        DerivationGraph graph = new DerivationGraph(plan.project());
        LayoutOutcome before = graph.get(ProjectResults.LAYOUT);
        opening.setNote("north light");
        LayoutOutcome untouched = graph.get(ProjectResults.LAYOUT);
        opening.setWidth(PlanBuilder.in("44 1/2"));
        LayoutOutcome after = graph.get(ProjectResults.LAYOUT);

        assertThat(untouched).isSameAs(before);
        assertThat(after.totals().total()).isLessThan(before.totals().total());
        assertThat(graph.get(ProjectResults.CHECK).findings()).isEqualTo(check());
        graph.close();
    }

    @Test
    void firstLayoutAfterAnEditKeepsTheHandingAndTheLayoutIsAsIfAskedAfresh() {
        Wall wall = plan.wall("W1", "0", "0", "240", "0");
        plan.wall("W2", "240", "0", "240", "120");
        Opening opening = plan.opening(wall, "O1", "29", "30", "27", "45");
        DerivationGraph graph = new DerivationGraph(plan.project());
        LayoutOutcome before = graph.get(LayoutResults.LAYOUT);
        opening.setOffset(PlanBuilder.in("31"));
        LayoutOutcome first = graph.get(LayoutResults.FIRST_LAYOUT);

        assertThat(first.result().effort()).isEqualTo(Effort.QUICK);
        assertThat(first.result().throughOnOdd()).isEqualTo(before.result().throughOnOdd());
        assertThat(graph.get(LayoutResults.LAYOUT))
                .isEqualTo(DerivationGraph.once(plan.project(), LayoutResults.LAYOUT));
        graph.close();
    }

    private List<Finding> check() {
        return DerivationGraph.once(plan.project(), ProjectResults.CHECK).findings();
    }
}
