package org.coursewright.exchange.sheet.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallLayout;
import org.coursewright.exchange.sheet.DemoSheets;
import org.coursewright.exchange.sheet.MadeWall;
import org.coursewright.exchange.sheet.Sheet;
import org.coursewright.exchange.sheet.SheetOpening;
import org.coursewright.exchange.sheet.SheetSettings;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.page.Area;
import org.coursewright.exchange.sheet.page.Label;
import org.coursewright.exchange.sheet.page.Shape;
import org.coursewright.exchange.sheet.page.SheetPage;
import org.coursewright.exchange.sheet.page.SheetType;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SheetLayoutTest {

    private static final SheetType TYPE = SheetType.load();
    private static List<SheetWall> demo;

    @BeforeAll
    static void layDemo() throws Exception {
        demo = DemoSheets.walls();
    }

    @Test
    void noTextOfTheDemoLiesOnAnotherOrLeavesTheFrame() {
        assertThat(demo).hasSize(14).allSatisfy(wall -> assertReadable(arrange(wall)));
    }

    @Test
    void noTextOfTheDemoInMillimetresLiesOnAnotherOrLeavesTheFrame() {
        List<SheetWall> walls = demo.stream().map(DemoSheets::inMillimetres).toList();
        assertThat(walls).allSatisfy(wall -> assertReadable(arrange(wall)));
        SheetPage page = arrange(walls.get(0)).pages().get(0);
        assertThat(page.width()).isEqualTo(420);
        assertThat(texts(page)).contains("All lengths are in millimetres.", "2515", "12141.2");
    }

    @Test
    void everyCourseHeightAndEveryJambIsOnTheSheet() {
        assertThat(demo).allSatisfy(wall -> {
            SheetFormat format = new SheetFormat(wall.format().unit());
            List<String> texts = texts(arrange(wall).pages().get(0));
            wall.layout().courses().forEach(course -> assertThat(texts).contains(
                    format.mark(course.course().bottom().plus(course.course().height()))));
            wall.openings().forEach(opening -> assertThat(texts).contains(format.length(opening.offset()),
                    format.length(opening.farJamb())));
            assertThat(texts).contains(format.length(wall.length()));
        });
    }

    @Test
    void firstCourseIsMarkedAsWorkedByHand() {
        // four whole units of 14 in and three joints: 57 1/2 in is 14 x 4 + 3 x 1/2
        SheetWall wall = MadeWall.of("H", Length.ofInchFraction(115, 2), 1);
        assertThat(texts(arrange(wall).pages().get(0))).containsSubsequence("First course from above: marks along the "
                + "line from the outer start face", "0\"", "1'-2\"", "1'-2 1/2\"", "2'-4 1/2\"", "2'-5\"", "3'-7\"",
                "3'-7 1/2\"", "4'-9 1/2\"");
    }

    @Test
    void openingsAreDrawnToScale() {
        SheetOpening door = new SheetOpening("D1", Length.ofInches(58), Length.ofInches(36), Length.ZERO,
                Length.ofInches(81));
        Sheet sheet = arrange(MadeWall.of("T", Length.ofInches(240), 20, door));
        double width = 36 * 25.4 / sheet.scale();
        double height = 81 * 25.4 / sheet.scale();
        assertThat(sheet.pages().get(0).marks()).anySatisfy(mark -> {
            assertThat(mark).isInstanceOf(Shape.class);
            Shape shape = (Shape) mark;
            assertThat(shape.corners().get(2).x() - shape.corners().get(0).x()).isCloseTo(width,
                    org.assertj.core.data.Offset.offset(1e-9));
            assertThat(shape.corners().get(2).y() - shape.corners().get(0).y()).isCloseTo(height,
                    org.assertj.core.data.Offset.offset(1e-9));
        });
    }

    @Test
    void scaleThatDoesNotFitIsReplacedAndTheSheetSaysSo() {
        SheetSettings settings = new SheetSettings(Optional.of(20), Length.ofInchFraction(1, 4),
                Optional.of("2026-03-02"));
        Sheet sheet = new SheetLayout(TYPE).arrange(demo.get(0), settings);
        assertThat(sheet.scale()).isEqualTo(48);
        assertThat(texts(sheet.pages().get(0))).contains("Scale 1:48 (1/4 in to the foot); 1:20 does not fit the paper",
                "Line: 1/4\" off the face", "Date: 2026-03-02");
    }

    @Test
    void marksThatFindNoRoomStandInTablesOnFurtherPages() {
        SheetWall wall = MadeWall.of("LONG", Length.ofInches(14 * 500 + 499 / 2), 40);
        Sheet sheet = arrange(wall);
        assertReadable(sheet);
        assertThat(sheet.pages()).hasSizeGreaterThan(1);
        List<String> texts = sheet.pages().stream().flatMap(page -> texts(page).stream()).toList();
        assertThat(texts).contains("Story pole: tops of courses above the base", "First course: marks along the line",
                "First course: marks along the line (continued)", "15'-0\"");
        SheetFormat format = new SheetFormat(DisplayUnit.INCH);
        LineMarks.alongFirstCourse(wall).forEach(mark -> assertThat(texts).contains(format.mark(mark)));
    }

    @Test
    void runsThatAreNotFilledAreToldWithTheirReason() {
        // a pier of 2 in between two windows is shorter than the shortest piece
        SheetOpening first = window("N1", 58);
        SheetOpening second = window("N2", 96);
        SheetWall wall = MadeWall.of("U", Length.ofInches(240), 20, first, second);
        assertThat(wall.layout().unfillable()).hasSize(8);
        Sheet sheet = arrange(wall);
        assertReadable(sheet);
        assertThat(texts(sheet.pages().get(0))).contains("Runs: 8 not filled, see the table; settle them before laying",
                "Runs not filled: settle these before laying", "9–16", "7'-10\"");
    }

    @Test
    void masonryBondedIntoAnotherWallKeepsClearOfTheHeights() {
        // 10 in of the first unit lie in the other wall: 14 + 1/2 + 14 in from -10 in is 18 1/2 in
        SheetWall plain = MadeWall.of("B", Length.ofInchFraction(37, 2), 1);
        Piece whole = new Piece(Length.ofInches(14), Piece.Kind.WHOLE);
        Run run = new Run(Length.ofInches(-10), plain.length(), RunEnd.FACE, RunEnd.FACE,
                Optional.of(new LengthRatio(Length.ofInchFraction(1, 2), 1)), 1, List.of(whole, whole));
        WallLayout layout = new WallLayout("B", List.of(new CourseLayout(plain.face().courses().get(0), List.of(run))),
                0, List.of(), 0, List.of(), true, 0);
        SheetWall bonded = new SheetWall("Made", "B14", "stretcher", plain.thickness(), plain.unitHeight(), List.of(),
                plain.top(), plain.format(), plain.face(), layout);
        SheetPage page = arrange(bonded).pages().get(0);
        assertThat(texts(page)).contains("-10\"", "1'-6 1/2\"");
        Area base = page.labels().stream().filter(label -> label.text().equals("base")).findFirst().orElseThrow().area(
                TYPE);
        assertThat(page.marks()).filteredOn(Shape.class::isInstance).isNotEmpty().allSatisfy(
                mark -> assertThat(((Shape) mark).corners()).allSatisfy(
                        corner -> assertThat(corner.x()).isGreaterThan(base.right())));
        assertReadable(arrange(bonded));
    }

    @Test
    void strangeNamesNeitherClipNorStopTheSheet() {
        SheetWall wall = MadeWall.of("W\u0007 " + "Ω\uD83D\uDE00wall ".repeat(30), Length.ofInches(100), 3);
        assertReadable(arrange(wall));
    }

    private static SheetOpening window(String mark, int offset) {
        return new SheetOpening(mark, Length.ofInches(offset), Length.ofInches(36), Length.ofInches(36),
                Length.ofInches(36));
    }

    private static Sheet arrange(SheetWall wall) {
        return new SheetLayout(TYPE).arrange(wall, SheetSettings.USUAL);
    }

    private static List<String> texts(SheetPage page) {
        return page.labels().stream().map(Label::text).toList();
    }

    private static void assertReadable(Sheet sheet) {
        for (SheetPage page : sheet.pages()) {
            Area frame = new Area(7, 7, page.width() - 14, page.height() - 14);
            List<Label> read = new ArrayList<>();
            for (Label label : page.labels()) {
                assertThat(frame.holds(label.area(TYPE))).as("%s: %s is in the frame", page.title(), label).isTrue();
                read.forEach(other -> assertThat(other.area(TYPE).overlaps(label.area(TYPE)))
                        .as("%s: %s lies on %s", page.title(), other, label).isFalse());
                read.add(label);
            }
        }
    }
}
