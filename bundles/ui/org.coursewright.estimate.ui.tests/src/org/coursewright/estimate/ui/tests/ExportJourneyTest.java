package org.coursewright.estimate.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.coursewright.workbench.notice.Notice;
import org.coursewright.workbench.notice.Notices;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Writing what the editors show, in the background. */
class ExportJourneyTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void openTheProject() throws Exception {
        Desk.openProject(SmallClinic.copyInto(folder));
    }

    @AfterEach
    void closeTheProject() {
        Desk.closeAll();
    }

    @Test
    void takeoffIsWrittenAsCommaSeparatedValues() throws Exception {
        List<String> lines = Files.readAllLines(write("takeoff", "takeoff.csv"));
        assertEquals("line,item,quantity,unit,formula,expression,source", lines.get(0));
        assertTrue(lines.size() > 10);
    }

    @Test
    void priceIsWrittenAsWorkbookAndAsPaper() throws Exception {
        assertEquals("PK", start(write("price", "price.xlsx"), 2));
        assertEquals("%PDF", start(write("price", "price.pdf"), 4));
    }

    @Test
    void scenariosAreWrittenSideBySide() throws Exception {
        assertTrue(Files.readAllLines(write("scenarios", "scenarios.csv")).get(0).endsWith("as planned,bought blocks"));
    }

    @Test
    void unknownEndingIsRefusedWithARemedy() throws Exception {
        Desk.export("price", folder.resolve("price.doc"));
        assertTrue(notices().stream().anyMatch(words -> words.contains(".xlsx, .csv or .pdf")));
        assertFalse(Files.exists(folder.resolve("price.doc")));
    }

    @Test
    void cancelledExportLeavesTheOlderFileAsItWas() throws Exception {
        Path target = Files.writeString(folder.resolve("price.csv"), "older");
        Desk.export("price", target);
        Job job = Arrays.stream(Job.getJobManager().find(null)).filter(each -> each.getName().endsWith("price.csv"))
                .findFirst().orElseThrow();
        job.cancel();
        Desk.await(() -> job.getState() == Job.NONE);
        Desk.settle();
        assertEquals("older", Files.readString(target));
        assertTrue(notices().isEmpty());
    }

    private Path write(String part, String name) throws Exception {
        Path target = folder.resolve(name);
        Desk.export(part, target);
        Desk.await(() -> notices().stream().anyMatch(words -> words.contains("written to " + target)));
        return target;
    }

    private static List<String> notices() {
        return PlatformUI.getWorkbench().getService(Notices.class).all().stream().map(Notice::message).toList();
    }

    private static String start(Path file, int count) throws Exception {
        return new String(Files.readAllBytes(file), 0, count, StandardCharsets.US_ASCII);
    }
}
