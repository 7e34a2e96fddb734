package org.coursewright.core.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.core.PlanBuilder.in;

import java.util.List;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Course;
import org.coursewright.bond.Levels;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.core.PlanBuilder;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Junction;
import org.coursewright.model.building.JunctionEnd;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.TeeTie;
import org.coursewright.model.building.Wall;
import org.junit.jupiter.api.Test;

class BondTranslatorTest {

    private final PlanBuilder plan = new PlanBuilder();

    private Translation translate() {
        return BondTranslator.translate(plan.project());
    }

    private static WallFace face(Translation translation, String mark) {
        return translation.request().walls().stream().filter(wall -> wall.mark().equals(mark)).findFirst()
                .orElseThrow();
    }

    private static List<String> codes(Translation translation, Severity severity) {
        return translation.findings().stream().filter(finding -> finding.severity() == severity).map(Finding::code)
                .toList();
    }

    private void rectangle() {
        plan.wall("W1", "0", "0", "240", "0");
        plan.wall("W2", "240", "0", "240", "120");
        plan.wall("W3", "240", "120", "0", "120");
        plan.wall("W4", "0", "120", "0", "0");
    }

    @Test
    void wallAloneIsAsLongAsItsCentreLineAndEndsFree() {
        plan.wall("W1", "0", "0", "144 1/2", "0");

        Translation translation = translate();

        WallFace face = face(translation, "W1");
        assertThat(face.length()).isEqualTo(in("144 1/2"));
        assertThat(face.start()).isEqualTo(new WallEnd.Free());
        assertThat(face.end()).isEqualTo(new WallEnd.Free());
        assertThat(face.courses()).hasSize(20);
        assertThat(face.stock().whole()).isEqualTo(in("14"));
        assertThat(face.rule().leastLap()).isEqualTo(in("3 1/2"));
        assertThat(translation.findings()).isEmpty();
    }

    @Test
    void headerBondShowsTheUnitsWidthAndIsAsThickAsTheUnitIsLong() {
        Wall wall = plan.wall("W1", "0", "0", "240", "0", Bond.HEADER, "90");
        plan.unit().getSpecialLengths().add(in("10"));
        plan.wall("W2", "240", "0", "240", "120", Bond.STRETCHER, "90");

        Translation translation = translate();

        assertThat(wall.getUnitType().getLength()).isEqualTo(in("14"));
        assertThat(face(translation, "W1").stock().whole()).isEqualTo(in("10"));
        assertThat(face(translation, "W1").stock().specials()).isEmpty();
        assertThat(face(translation, "W2").stock().specials()).containsExactly(in("10"));
        // The corner of W1 lies half of W2's 10 in beyond its centre line's end, that of W2 half of W1's 14 in.
        assertThat(face(translation, "W1").length()).isEqualTo(in("245"));
        assertThat(face(translation, "W2").length()).isEqualTo(in("127"));
        assertThat(face(translation, "W2").start()).isInstanceOfSatisfying(WallEnd.Corner.class,
                corner -> assertThat(corner.setback()).isEqualTo(in("14")));
    }

    @Test
    void cornersOfARectangleTakeTurns() {
        rectangle();

        Translation translation = translate();

        assertThat(translation.request().meetings()).hasSize(4).extracting(Meeting::kind)
                .containsOnly(Meeting.Kind.CORNER);
        assertThat(face(translation, "W1").length()).isEqualTo(in("250"));
        assertThat(face(translation, "W2").length()).isEqualTo(in("130"));
        WallEnd.Corner end = (WallEnd.Corner) face(translation, "W1").end();
        assertThat(face(translation, "W2").start()).isEqualTo(end);
        assertThat(end.setback()).isEqualTo(in("10"));
        assertThat(translation.findings()).isEmpty();
    }

    @Test
    void chosenHandingReachesTheEngine() {
        rectangle();
        Wall first = plan.project().getBuilding().getStoreys().get(0).getWalls().get(0);
        Wall second = plan.project().getBuilding().getStoreys().get(0).getWalls().get(1);
        choose(first, second).setThrough(second);

        Translation translation = translate();

        assertThat(translation.request().meetings()).filteredOn(meeting -> meeting.throughOnOdd().isPresent())
                .singleElement()
                .satisfies(meeting -> assertThat(meeting.walls()).contains("W1", "W2"))
                .satisfies(meeting -> assertThat(meeting.throughOnOdd()).contains("W2"));
    }

    private Junction choose(Wall... walls) {
        Junction junction = BuildingFactory.eINSTANCE.createJunction();
        for (Wall wall : walls) {
            JunctionEnd end = BuildingFactory.eINSTANCE.createJunctionEnd();
            end.setWall(wall);
            junction.getEnds().add(end);
        }
        plan.project().getBuilding().getJunctions().add(junction);
        return junction;
    }

    @Test
    void partitionIsTiedUnlessSomebodyChoseToBondIt() {
        Wall bar = plan.wall("W1", "0", "0", "240", "0");
        Wall stem = plan.wall("W2", "120", "0", "120", "100");

        Translation tied = translate();
        Junction junction = choose(stem, bar);
        junction.setTie(TeeTie.BONDED);
        Translation bonded = translate();

        assertThat(face(tied, "W2").start()).isEqualTo(new WallEnd.Tied(new Levels(1, 20)));
        assertThat(face(tied, "W2").length()).isEqualTo(in("95"));
        assertThat(face(tied, "W1").obstacles()).isEmpty();
        assertThat(codes(tied, Severity.NOTE)).containsExactly("meeting.tied");
        assertThat(face(bonded, "W2").start()).isInstanceOfSatisfying(WallEnd.Bonded.class,
                end -> assertThat(end.reach()).isEqualTo(in("10")));
        assertThat(face(bonded, "W1").obstacles()).singleElement().satisfies(tee -> {
            assertThat(tee.kind()).isEqualTo(Obstacle.Kind.TEE);
            assertThat(tee.from()).isEqualTo(in("115"));
            assertThat(tee.to()).isEqualTo(in("125"));
            assertThat(tee.firstCourse()).isEqualTo(1);
            assertThat(tee.lastCourse()).isEqualTo(20);
        });
        assertThat(bonded.request().meetings()).singleElement()
                .satisfies(meeting -> assertThat(meeting.walls()).containsExactly("W2", "W1"));
    }

    @Test
    void openingAndItsLintelTakeWholeCourses() {
        Wall wall = plan.wall("W1", "0", "0", "240", "0");
        Opening opening = plan.opening(wall, "O1", "60", "36", "27", "45");
        opening.setLintelType(plan.lintel("L8", "8", "12"));

        Translation translation = translate();

        // Sill at 27 in is the top of course 6, head at 72 in the top of course 16; 8 in of lintel pack up to 9 in.
        assertThat(face(translation, "W1").obstacles()).containsExactly(
                new Obstacle(Obstacle.Kind.OPENING, "O1", in("60"), in("96"), 7, 16, java.util.Optional.empty()),
                new Obstacle(Obstacle.Kind.LINTEL, "O1", in("48"), in("108"), 17, 18, java.util.Optional.empty()));
        assertThat(codes(translation, Severity.NOTE)).containsExactly("lintel.off-course");
        assertThat(codes(translation, Severity.WARNING)).isEmpty();
    }

    @Test
    void sillAndHeadOffTheCourseLinesAreToldWithTheNearest() {
        Wall wall = plan.wall("W1", "0", "0", "240", "0");
        plan.opening(wall, "O1", "60", "36", "30", "50");

        List<Finding> findings = translate().findings();

        assertThat(findings).extracting(Finding::code).containsExactly("opening.sill-off-course",
                "opening.head-off-course");
        assertThat(findings.get(0).message()).contains("2'-3\"").contains("2'-7 1/2\"");
    }

    @Test
    void heightThatIsNoWholeNumberOfCoursesIsToldWithTheNearestTwo() {
        plan.wall("W1", "0", "0", "240", "0", Bond.STRETCHER, "96");

        List<Finding> findings = translate().findings();

        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("wall.height-off-course");
            assertThat(finding.message()).contains("7'-10 1/2\" (21 courses)").contains("8'-3\" (22 courses)");
        });
    }

    @Test
    void gableIsLaidInNarrowingCourses() {
        Wall wall = plan.wall("W1", "0", "0", "240", "0", Bond.STRETCHER, "90");
        plan.top(wall, "0", "90");
        plan.top(wall, "120", "150");
        plan.top(wall, "240", "90");

        List<Course> courses = face(translate(), "W1").courses();

        assertThat(courses.get(19).topTo()).isEqualTo(in("240"));
        assertThat(courses.get(20).topFrom()).isEqualTo(in("9"));
        assertThat(courses.get(20).topTo()).isEqualTo(in("231"));
    }

    @Test
    void wallsThatAreNotSoundAreToldAndTheOthersStillLaid() {
        plan.wall("W1", "0", "0", "240", "0");
        plan.wall("W2", "300", "0", "300", "0");
        Wall narrow = plan.wall("W3", "0", "300", "100", "300");
        plan.opening(narrow, "O1", "80", "36", "0", "72");
        Wall crowded = plan.wall("W4", "0", "600", "240", "600");
        plan.opening(crowded, "O2", "40", "36", "0", "72");
        plan.opening(crowded, "O3", "70", "36", "0", "72");
        plan.wall("w1", "0", "900", "240", "900");

        Translation translation = translate();

        assertThat(translation.request().walls()).extracting(WallFace::mark).containsExactly("W1");
        assertThat(codes(translation, Severity.INVALID)).containsExactlyInAnyOrder("wall.zero-length",
                "opening.beyond-wall", "opening.overlap", "wall.duplicate-mark");
    }

    @Test
    void wallKeepsItsCornerWithAWallThatIsNotSound() {
        rectangle();
        Wall second = plan.project().getBuilding().getStoreys().get(0).getWalls().get(1);
        plan.opening(second, "O1", "100", "60", "0", "72");

        Translation translation = translate();

        assertThat(translation.request().walls()).extracting(WallFace::mark).containsExactly("W1", "W3", "W4");
        assertThat(face(translation, "W1").length()).isEqualTo(in("250"));
        WallEnd.Corner end = (WallEnd.Corner) face(translation, "W1").end();
        assertThat(translation.request().meetings()).filteredOn(meeting -> meeting.id().equals(end.meeting()))
                .singleElement().satisfies(meeting -> assertThat(meeting.walls()).containsExactly("W1"));
        assertThat(BondSolver.standard().solve(translation.request(), Progress.NONE).walls()).hasSize(3);
    }

    @Test
    void crossingWallsAreInvalid() {
        plan.wall("W1", "0", "0", "240", "0");
        plan.wall("W2", "120", "-100", "120", "100");

        assertThat(codes(translate(), Severity.INVALID)).containsExactly("wall.crossing");
    }

    @Test
    void wallsInLineByAFaceAreInvalidAndNotToBeJoined() {
        plan.wall("W1", "0", "0", "240", "0");
        plan.wall("C1", "60", "2", "180", "2");

        List<Finding> findings = translate().findings().stream().filter(each -> each.code().startsWith("wall."))
                .toList();

        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.INVALID);
            assertThat(finding.element().name()).isEqualTo("walls W1 and C1");
            assertThat(finding.message()).contains("side by side", "5'-0\" east, 2\" north", "Move one of them aside");
        });
    }

    @Test
    void wallsThatLieInEachOtherAreToldAndTheFirstIsLaid() {
        plan.wall("W1", "0", "0", "240", "0");
        plan.wall("W2", "0", "0", "100", "0");

        Translation translation = translate();

        assertThat(codes(translation, Severity.INVALID)).containsExactly("wall.crossing");
        assertThat(BondSolver.standard().solve(translation.request(), Progress.NONE).walls()).singleElement()
                .satisfies(wall -> assertThat(wall.mark()).isEqualTo("W1"));
    }

    @Test
    void openingThatReachesThroughARakeIsToldWithTheHeightThere() {
        Wall wall = plan.wall("W1", "0", "0", "200", "0");
        plan.top(wall, "0", "90");
        plan.top(wall, "100", "140");
        plan.top(wall, "200", "90");
        plan.opening(wall, "N1", "20", "40", "70", "31");

        // At the near jamb, 20 in from the eaves, the gable is 90 + 20 / 2 = 100 in high.
        assertThat(translate().findings()).filteredOn(finding -> finding.severity() == Severity.INVALID)
                .singleElement().satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo("opening.beyond-top");
                    assertThat(finding.message()).contains("the wall there from 0 to 8'-4\"");
                });
    }

    @Test
    void thirdWallAtACornerStopsAtTheOthersFaces() {
        plan.wall("W1", "0", "0", "240", "0");
        plan.wall("W2", "0", "0", "-120", "200");
        plan.wall("W3", "0", "0", "-120", "-200");

        Translation translation = translate();

        assertThat(List.of(face(translation, "W1").start(), face(translation, "W2").start(),
                face(translation, "W3").start())).filteredOn(end -> end.equals(new WallEnd.Tied())).hasSize(1);
        assertThat(codes(translation, Severity.WARNING)).contains("meeting.skew");
        assertThat(BondSolver.standard().solve(translation.request(), Progress.NONE).walls()).hasSize(3);
    }

    @Test
    void impossibleRuleIsToldOnTheWall() {
        Wall wall = plan.wall("W1", "0", "0", "240", "0");
        wall.setBondRule(BuildingFactory.eINSTANCE.createBondRule());
        wall.getBondRule().setLeastLap(in("8"));

        Translation translation = translate();

        assertThat(translation.request().walls()).isEmpty();
        assertThat(translation.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("rule.lap");
            assertThat(finding.element().name()).isEqualTo("wall W1");
        });
    }

    @Test
    void buildingBeyondAllReasonIsRefusedWallByWall() {
        for (int i = 0; i < 8; i++) {
            plan.wall("W" + i, "0", i + "00'", "3000'", i + "00'", Bond.HEADER, "200'");
        }

        Translation translation = translate();

        // 3601 units to a course, 533 courses: more than 200,000 in each wall.
        assertThat(translation.request().walls()).isEmpty();
        assertThat(codes(translation, Severity.INVALID)).containsOnly("wall.too-many-units").hasSize(8);
    }

    @Test
    void wallsThatTogetherTakeMoreThanAMillionUnitsAreNotAllLaid() {
        for (int i = 0; i < 7; i++) {
            plan.wall("W" + i, "0", i + "00'", "3000'", i + "00'", Bond.HEADER, "20'");
        }

        Translation translation = translate();

        // 3601 units to a course, 54 courses: 194,454 in each wall, five walls in a million.
        assertThat(translation.request().walls()).hasSize(5);
        assertThat(codes(translation, Severity.INVALID)).containsExactly("project.too-many-units",
                "project.too-many-units");
    }

    @Test
    void wallsWhoseCoursesDifferCannotBeLaced() {
        plan.wall("W1", "0", "0", "240", "0");
        plan.wall("W2", "240", "0", "240", "120").setBase(in("2"));

        assertThat(codes(translate(), Severity.WARNING)).containsExactly("meeting.courses-differ");
    }
}
