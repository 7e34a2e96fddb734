package org.coursewright.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.project.ProjectFactory;
import org.junit.jupiter.api.Test;

class ElementLabelsTest {

    private final SampleBuilding sample = new SampleBuilding();

    @Test
    void labelIsKindAndMark() {
        assertThat(ElementLabels.of(sample.wall)).isEqualTo("Wall W1");
        assertThat(ElementLabels.of(sample.door)).isEqualTo("Door D1");
        assertThat(ElementLabels.of(sample.corner)).isEqualTo("Junction W1, W2");
        assertThat(ElementLabels.of(sample.project)).isEqualTo("Store");
        assertThat(ElementLabels.of(sample.project.getCatalogue())).isEqualTo("Catalogue");
    }

    @Test
    void whatHasNoMarkOrNameSaysSo() {
        assertThat(ElementLabels.of(BuildingFactory.eINSTANCE.createWall())).isEqualTo("Wall without a mark");
        assertThat(ElementLabels.of(BuildingFactory.eINSTANCE.createJunction())).isEqualTo("Junction without a mark");
        assertThat(ElementLabels.of(ProjectFactory.eINSTANCE.createProject())).isEqualTo("Project");
    }

    @Test
    void severalElementsAreNamedByTheFirst() {
        assertThat(ElementLabels.of(List.of(sample.door))).isEqualTo("Door D1");
        assertThat(ElementLabels.of(List.of(sample.wall, sample.door))).isEqualTo("Wall W1 and Door D1");
        assertThat(ElementLabels.of(List.of(sample.wall, sample.ruledWall, sample.door)))
                .isEqualTo("Wall W1 and 2 more");
    }

    @Test
    void iconKeyIsInSmallLettersWithHyphens() {
        assertThat(ElementLabels.iconKey(BuildingFactory.eINSTANCE.createGradeBeam())).isEqualTo("grade-beam");
        assertThat(ElementLabels.iconKey(SampleBuilding.opening("V1", OpeningKind.VENT))).isEqualTo("vent");
    }

    @Test
    void freeMarkHasTheLeastFreeNumber() {
        assertThat(Marks.free(BuildingPackage.Literals.WALL, sample.door, "W")).isEqualTo("W5");
        sample.wall.setMark("North");
        assertThat(Marks.free(BuildingPackage.Literals.WALL, sample.door, "W")).isEqualTo("W1");
    }

    @Test
    void formatOfLengthsIsThatOfTheProject() {
        assertThat(DisplayFormat.of(sample.wall)).isEqualTo(LengthFormat.INCHES);
        sample.project.setInchDenominator(8);
        assertThat(DisplayFormat.of(sample.wall)).isEqualTo(new LengthFormat(DisplayUnit.INCH, 8));
        sample.project.setInchDenominator(7);
        assertThat(DisplayFormat.of(sample.wall)).isEqualTo(LengthFormat.INCHES);
        assertThat(DisplayFormat.of(BuildingFactory.eINSTANCE.createWall())).isEqualTo(LengthFormat.MILLIMETRES);
    }
}
