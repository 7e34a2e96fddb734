package org.coursewright.core.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.coursewright.core.PlanBuilder;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.session.ElementIds;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ElementReferenceTest {

    private final PlanBuilder plan = new PlanBuilder();
    private final Wall wall = plan.wall("W1", "0", "0", "240", "0");
    private final Opening opening = plan.opening(wall, "O1", "229", "30", "27", "45");

    @BeforeEach
    void giveIds() {
        ElementIds.seed(plan.project());
    }

    @Test
    void findingLeadsToItsElementWhateverBecomesOfTheMark() {
        Finding beyond = finding("opening.beyond-wall");
        opening.setMark("O7");
        wall.setMark("O1");

        assertThat(beyond.element().name()).isEqualTo("opening O1 in wall W1");
        assertThat(beyond.element().in(plan.project())).containsSame(opening);
    }

    @Test
    void secondOfTwoElementsWithOneMarkIsFound() {
        Wall other = plan.wall("W1", "0", "100", "240", "100");

        assertThat(finding("wall.duplicate-mark").element().in(plan.project())).containsSame(other);
    }

    @Test
    void whatWasTakenOutIsNotFoundUntilItComesBack() {
        ElementReference reference = finding("opening.beyond-wall").element();
        EcoreUtil.remove(opening);
        assertThat(reference.in(plan.project())).isEmpty();

        wall.getOpenings().add(opening);
        assertThat(reference.in(plan.project())).containsSame(opening);
    }

    @Test
    void elementOfNoFileHasNameButNoId() {
        PlanBuilder loose = new PlanBuilder();
        ElementReference reference = ElementReference.of(loose.wall("W9", "0", "0", "100", "0"), "wall W9");

        assertThat(reference.id()).isEmpty();
        assertThat(reference.at("course 2").name()).isEqualTo("wall W9, course 2");
        assertThat(reference.in(loose.project())).isEmpty();
    }

    private Finding finding(String code) {
        return DerivationGraph.once(plan.project(), ProjectResults.CHECK).findings().stream()
                .filter(found -> found.code().equals(code)).findFirst().orElseThrow();
    }
}
