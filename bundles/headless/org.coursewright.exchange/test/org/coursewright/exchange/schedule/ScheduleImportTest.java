package org.coursewright.exchange.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.building.TopPoint;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.LintelType;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Marked;
import org.coursewright.model.project.Project;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScheduleImportTest {

    @TempDir
    Path folder;

    private ScheduleFixture schedules;

    @BeforeEach
    void setUp() {
        schedules = new ScheduleFixture(folder);
    }

    @Test
    void twoRoomsBecomeAProject() {
        Project project = schedules.project();
        assertThat(project.getName()).isEqualTo("Two rooms");
        assertThat(project.getDisplayUnit()).isEqualTo(DisplayUnit.INCH);
        assertThat(walls(project)).extracting(Marked::getMark).containsExactly("W1", "W2", "W3", "W4", "W5");
        Wall wall = walls(project).get(1);
        assertThat(wall.getFromX()).isEqualTo(Length.ofInches(240));
        assertThat(wall.getToY()).isEqualTo(Length.ofInches(144));
        assertThat(wall.getHeight()).isEqualTo(Length.ofInches(90));
        assertThat(wall.getBond()).isEqualTo(Bond.STRETCHER);
    }

    @Test
    void openingsStandInTheirWalls() {
        List<Wall> walls = walls(schedules.project());
        Opening door = walls.get(0).getOpenings().get(0);
        assertThat(door.getMark()).isEqualTo("D1");
        assertThat(door.getKind()).isEqualTo(OpeningKind.DOOR);
        assertThat(door.getOffset()).isEqualTo(Length.ofInches(48));
        assertThat(door.getMoveTolerance()).isEqualTo(Length.ofInches(4));
        assertThat(walls.get(4).getOpenings().get(0).getSill()).isEqualTo(Length.ZERO);
        assertThat(walls.get(4).getOpenings().get(0).getLintelType()).isNull();
    }

    @Test
    void wallsMayHaveTolerances() {
        List<Wall> walls = walls(schedules.walls("""
                mark,from_x,from_y,to_x,to_y,unit,height,move,size
                W1,0,0,20',0,14x10x4,90,±4,+/- 2 in
                W2,0,100,20',100,14x10x4,90,,
                """).openings("mark,wall,kind,offset,width,sill,height\n").project());
        assertThat(walls.get(0).getMoveTolerance()).isEqualTo(Length.ofInches(4));
        assertThat(walls.get(0).getSizeTolerance()).isEqualTo(Length.ofInches(2));
        assertThat(walls.get(1).getMoveTolerance()).isEqualTo(Length.ZERO);
        assertThat(walls.get(1).getSizeTolerance()).isEqualTo(Length.ZERO);
    }

    @Test
    void negativeToleranceOfAWallIsReported() {
        assertThat(schedules.walls("mark,from_x,from_y,to_x,to_y,unit,height,move\nW1,0,0,20',0,14x10x4,90,-4\n")
                .openings("mark,wall,kind,offset,width,sill,height\n")
                .errors()).anySatisfy(error -> assertThat(error).contains("walls.csv, line 2", "move"));
    }

    @Test
    void lintelOfABearingAloneIsOneCourseDeep() {
        LintelType lintel = walls(schedules.project()).get(0).getOpenings().get(0).getLintelType();
        assertThat(lintel.getHeight()).isEqualTo(Length.ofInchFraction(9, 2));
        assertThat(lintel.getBearing()).isEqualTo(Length.ofInches(12));
    }

    @Test
    void equalLintelsAreOneType() {
        Project project = schedules.openingRow("N2,W2,window,3',24,36,45,4 1/2 in x 12 in,,").project();
        assertThat(project.getCatalogue().getLintelTypes()).extracting(LintelType::getHeight)
                .containsExactly(Length.ofInchFraction(9, 2), Length.ofInches(8));
    }

    @Test
    void lintelMarkIsAssumedOneCourseDeepAndSaysSo() {
        ScheduleFixture marked = schedules.openingRow("N2,W2,window,3',24,36,45,LB,,");
        LintelType lintel = walls(marked.project()).get(1).getOpenings().get(0).getLintelType();
        assertThat(lintel.getMark()).isEqualTo("LB");
        assertThat(lintel.getBearing()).isEqualTo(Length.ofInches(12));
        assertThat(marked.warnings()).singleElement().asString()
                .startsWith("openings.csv, line 5, column lintel: No size is given for lintel LB: assumed one course");
    }

    @Test
    void lapIsLeftToEachWallsUnitUnlessGiven() {
        assertThat(schedules.project().getBondRule().getLeastLap()).isNull();
        assertThat(schedules.project().getBondRule().getHeadMost()).isEqualTo(Length.ofInchFraction(3, 4));
    }

    @Test
    void gableRisesToItsApexAtMidLength() {
        Project project = schedules.walls("""
                mark,from_x,from_y,to_x,to_y,unit,bond,height,gable
                G1,0,0,20',0,14x10x4,header,90,45
                """).openings("mark,wall,kind,offset,width,sill,height\n").project();
        assertThat(walls(project).get(0).getTopProfile()).extracting(TopPoint::getOffset, TopPoint::getHeight)
                .containsExactly(tuple(0, 90), tuple(120, 135), tuple(240, 90));
    }

    @Test
    void columnsMayStandInAnyOrderAndInCapitals() {
        Project project = schedules.walls("""
                HEIGHT; Unit ;to_y;to_x;from_y;from_x;Mark
                2400;290x140x90;0;4 m;0;0;A
                """).openings("mark;wall;kind;offset;width;height\n").millimetres().project();
        Wall wall = walls(project).get(0);
        assertThat(wall.getToX()).isEqualTo(Length.ofMillimetres(4000));
        assertThat(wall.getUnitType().getMark()).isEqualTo("290 x 140 x 90 mm");
        assertThat(((Marked) wall.eContainer()).getMark()).isEqualTo("1");
    }

    @Test
    void cellsWithAUnitAreReadInThatUnit() {
        Project project = schedules.wallRow("W6,9 m,0,9 m,3000 mm,14x10x4,,0,7'6,1").project();
        assertThat(walls(project).get(5).getToY()).isEqualTo(Length.ofMillimetres(3000));
        assertThat(walls(project).get(5).getHeight()).isEqualTo(Length.ofInches(90));
    }

    @Test
    void unitScheduleIsRead() {
        UnitType unit = schedules.units("""
                mark,length,width,height,mass,special_lengths,shortest_piece,cut_step,kerf
                14x10x4,14,10,4,30,10 | 6 3/4;6.75,4,1/4,1/8
                """).project().getCatalogue().getUnitTypes().get(0);
        assertThat(unit.getMass()).isEqualByComparingTo(new BigDecimal("13.6077711"));
        assertThat(unit.getSpecialLengths()).containsExactly(Length.ofInchFraction(27, 4), Length.ofInches(10));
        assertThat(unit.getShortestPiece()).isEqualTo(Length.ofInches(4));
        assertThat(unit.getKerf()).isEqualTo(Length.ofInchFraction(1, 8));
        assertThat(unit.getNote()).isNull();
    }

    @Test
    void builtInUnitCarriesItsSource() {
        assertThat(schedules.project().getCatalogue().getUnitTypes()).singleElement()
                .satisfies(unit -> assertThat(unit.getNote()).contains("from memory"));
    }

    @Test
    void unknownColumnsAreNamedInAWarning() {
        String walls = ScheduleFixture.WALLS.replace("storey\n", "storey,fire rating,colour\n");
        assertThat(schedules.walls(walls).warnings()).containsExactly(
                "walls.csv, line 1: Passed over \"fire rating\", \"colour\": no such column is known here.");
    }

    @Test
    void otherSeparatorsAreMentioned() {
        assertThat(schedules.walls(ScheduleFixture.WALLS.replace(',', ';')).warnings())
                .containsExactly("walls.csv, line 1: Read with semicolons between cells.");
    }

    private static org.assertj.core.groups.Tuple tuple(long offset, long height) {
        return org.assertj.core.groups.Tuple.tuple(Length.ofInches(offset), Length.ofInches(height));
    }

    private static List<Wall> walls(Project project) {
        return project.getBuilding().getStoreys().stream().flatMap(storey -> storey.getWalls().stream()).toList();
    }
}
