package org.coursewright.core.takeoff.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Effort;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.core.takeoff.ProjectTakeoff;
import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;
import org.junit.jupiter.api.Test;

/**
 * The sheet in docs/takeoff-by-hand on which the whole demo is taken off by hand agrees with the engine, line by line: the sheet
 * for the layout that it was worked from, its workings for the layout of today.
 */
class HandSheetTest {

    /** Quantities are written to twelve decimals. */
    private static final BigDecimal LAST_DIGIT = new BigDecimal("2e-12");
    /** The engine keeps the ends of raked courses to 1/320 mm: two gables of nine courses, each 114.3 mm high. */
    private static final BigDecimal RAKES = new BigDecimal("6.5e-6");
    private static final Path ROOT = root();
    private static final Path SHEET = ROOT.resolve("docs/takeoff-by-hand");
    private static final Path SUCCESSOR = Path.of("target", "takeoff-by-hand");

    @Test
    void countsAreThoseOfTheLayout() throws IOException {
        assertThat(written(Counts.of(layout()))).isEqualTo(rows("counts.csv").toList());
    }

    @Test
    void workingsGiveTheResults() throws IOException {
        assertThat(reckoned(sheet(), counts())).usingElementComparator(BigDecimal::compareTo).isEqualTo(sheet().stream()
                .map(SheetLine::result).toList());
    }

    @Test
    void takeOffOfTheLayoutSaysTheSameLineByLine() throws Exception {
        Project project = project();
        compare(takeOff(project, pinned(project)), sheet().stream().map(SheetLine::result).toList());
    }

    /** Also writes the successor of the sheet, to be copied over it when the demo or its layout has changed for good. */
    @Test
    void workingsHoldForTheLayoutOfToday() throws Exception {
        Project project = project();
        LayoutOutcome laid = new BuildingLayout(BondSolver.standard()).lay(project, Progress.NONE);
        List<LaidRow> rows = LaidRow.of(laid.result().walls());
        List<BigDecimal> results = reckoned(sheet(), Counts.of(rows));
        writeSuccessor(rows, results);
        compare(takeOff(project, laid), results);
    }

    private static void compare(List<TakeoffLine> lines, List<BigDecimal> results) throws IOException {
        List<SheetLine> sheet = sheet();
        assertThat(sheet).hasSameSizeAs(lines).hasSizeGreaterThan(15);
        for (int i = 0; i < sheet.size(); i++) {
            SheetLine byHand = sheet.get(i);
            TakeoffLine line = lines.get(i);
            assertThat(List.of(byHand.item(), byHand.formula(), byHand.unit())).as("line %d", i + 1)
                    .containsExactly(line
                            .item(), line.formula(), line.quantity().unitCode());
            assertThat(line.quantity().value()).as("line %d, %s: %s", i + 1, byHand.item(), byHand.working()).isCloseTo(
                    results.get(i), within(byHand.formula().equals("face.net") ? RAKES : LAST_DIGIT));
        }
    }

    private static List<TakeoffLine> takeOff(Project project, LayoutOutcome layout) {
        return ProjectTakeoff.of(project, layout, Progress.NONE).lines();
    }

    private static List<BigDecimal> reckoned(List<SheetLine> sheet, Map<String, BigDecimal> counts) {
        List<BigDecimal> results = new ArrayList<>();
        sheet.forEach(line -> results.add(Working.result(line.working(), counts, results)));
        return results;
    }

    private static Project project() throws Exception {
        return new ProjectStore().load(ROOT.resolve("releng/demo/clinic.coursewright"));
    }

    /** The building laid as the sheet has it, whatever the engine would lay today. */
    private static LayoutOutcome pinned(Project project) throws IOException {
        BondRequest request = BondTranslator.translate(project).request();
        Map<String, List<LaidRow>> byWall = layout().stream().collect(Collectors.groupingBy(LaidRow::wall));
        List<WallLayout> walls = request.walls().stream().map(WallFace::mark).map(mark -> wall(mark, byWall.get(mark)))
                .toList();
        return new LayoutOutcome(request, new BondResult(walls, Map.of(), false, 0, Effort.FULL), UnitCount.of(walls
                .stream()), List.of());
    }

    private static WallLayout wall(String mark, List<LaidRow> rows) {
        Map<Integer, List<LaidRow>> byCourse = rows.stream().collect(Collectors.groupingBy(row -> row.course().number(),
                LinkedHashMap::new, Collectors.toList()));
        List<CourseLayout> courses = byCourse.values().stream().map(course -> new CourseLayout(course.get(0).course(),
                course.stream().map(LaidRow::run).toList())).toList();
        return new WallLayout(mark, courses, 0, List.of(), 0, List.of(), false, 0);
    }

    private static List<LaidRow> layout() throws IOException {
        return rows("layout.csv").map(LaidRow::parse).toList();
    }

    private static Map<String, BigDecimal> counts() throws IOException {
        Map<String, BigDecimal> counts = new LinkedHashMap<>();
        rows("counts.csv").map(row -> row.split(",")).forEach(cells -> counts.put(cells[0], new BigDecimal(cells[1])));
        return counts;
    }

    private static List<String> written(Map<String, BigDecimal> counts) {
        return counts.entrySet().stream().map(count -> count.getKey() + "," + count.getValue().toPlainString())
                .toList();
    }

    private static List<SheetLine> sheet() throws IOException {
        return rows("sheet.csv").map(SheetLine::parse).toList();
    }

    private static Stream<String> rows(String file) throws IOException {
        return Files.readAllLines(SHEET.resolve(file)).stream().skip(1);
    }

    private static void writeSuccessor(List<LaidRow> rows, List<BigDecimal> results) throws IOException {
        Files.createDirectories(SUCCESSOR);
        write("layout.csv", LaidRow.HEADER, rows.stream().map(LaidRow::line));
        write("counts.csv", "count,value", written(Counts.of(rows)).stream());
        List<SheetLine> sheet = sheet();
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < sheet.size(); i++) {
            lines.add(sheet.get(i).row(i + 1, results.get(i)));
        }
        write("sheet.csv", SheetLine.HEADER, lines.stream());
    }

    private static void write(String file, String header, Stream<String> rows) throws IOException {
        Files.write(SUCCESSOR.resolve(file), Stream.concat(Stream.of(header), rows).toList());
    }

    private static Path root() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve("releng/demo"))) {
            folder = folder.getParent();
        }
        return folder;
    }
}
