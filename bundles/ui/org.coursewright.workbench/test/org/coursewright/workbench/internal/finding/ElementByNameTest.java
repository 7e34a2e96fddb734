package org.coursewright.workbench.internal.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.coursewright.model.building.Building;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ElementByNameTest {

    private final Project project = ProjectFactory.eINSTANCE.createProject();
    private final Storey storey = BuildingFactory.eINSTANCE.createStorey();
    private final Wall wall = wall("W1");
    private final Wall longerMark = wall("W12");
    private final Opening door = BuildingFactory.eINSTANCE.createOpening();

    @BeforeEach
    void build() {
        Building building = BuildingFactory.eINSTANCE.createBuilding();
        building.getStoreys().add(storey);
        project.setBuilding(building);
        door.setMark("D1");
        wall.getOpenings().add(door);
    }

    @Test
    void wallIsFoundByItsMark() {
        assertThat(find("wall W1")).isSameAs(wall);
    }

    @Test
    void wallWithALongerMarkIsNotTakenForIt() {
        assertThat(find("wall W12")).isSameAs(longerMark);
    }

    @Test
    void courseOfAWallLeadsToTheWall() {
        assertThat(find("wall W1, course 7")).isSameAs(wall);
    }

    @Test
    void openingIsFoundRatherThanTheWallItIsIn() {
        assertThat(find("opening D1 in wall W1")).isSameAs(door);
    }

    @Test
    void firstOfSeveralWallsIsFound() {
        assertThat(find("walls W12 and W1")).isSameAs(longerMark);
    }

    @Test
    void nameOfNothingLeadsToTheProject() {
        assertThat(find("project")).isSameAs(project);
        assertThat(find("wall W9")).isSameAs(project);
    }

    private Object find(String name) {
        return new ElementByName(project).find(name).orElseThrow();
    }

    private Wall wall(String mark) {
        Wall made = BuildingFactory.eINSTANCE.createWall();
        made.setMark(mark);
        storey.getWalls().add(made);
        return made;
    }
}
