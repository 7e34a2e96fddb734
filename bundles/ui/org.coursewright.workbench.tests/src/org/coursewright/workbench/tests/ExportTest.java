package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is on the screen is written to files in the background, by the same commands as on the command line. */
class ExportTest {

    private static final String EXPORT = "org.coursewright.workbench.export";

    private final Window window = new Window();

    @TempDir
    private Path folder;

    @BeforeEach
    void openTheProject() throws Exception {
        window.open(SampleProject.in(folder));
    }

    @AfterEach
    void closeTheProject() {
        window.forgetEverything();
    }

    @Test
    void layoutIsWrittenWithEditsThatAreNotSaved() throws Exception {
        window.select(SampleProject.NAME, "Building", "Storey Ground", "Wall W3");
        Window.type(window.field(Text.class, "Mark"), "North");
        Path file = folder.resolve("lay.json");
        export("lay", file);

        String json = Files.readString(file);
        assertTrue(json.contains("\"coursewright.lay/1\""), json);
        assertTrue(json.contains("\"North\""));
        assertTrue(window.shell().getText().startsWith("*"), "the project itself is not saved by it");
    }

    @Test
    void takeOffIsWritten() throws Exception {
        Path file = folder.resolve("takeoff.json");
        export("takeoff", file);

        assertTrue(Files.readString(file).contains("\"coursewright.takeoff/1\""));
    }

    @Test
    void aSheetIsWrittenForEachWall() throws Exception {
        Path sheets = folder.resolve("sheets");
        export("sheets", sheets);

        try (Stream<Path> files = Files.list(sheets)) {
            assertEquals(4, files.filter(file -> file.toString().endsWith(".pdf")).count());
        }
    }

    @Test
    void projectThatContradictsItselfIsToldAndNothingIsWritten() throws Exception {
        window.select(SampleProject.NAME, "Building", "Storey Ground", "Wall W1", "Door D1");
        Window.type(window.field(Text.class, "Offset"), "40'");
        Path file = folder.resolve("lay.json");
        run("lay", file);
        Widgets.await(() -> notice("opening D1 in wall W1"));

        assertFalse(Files.exists(file));
    }

    @Test
    void copiesOfTheProjectAreTakenAway() throws Exception {
        List<Path> before = copies();
        export("lay", folder.resolve("lay.json"));

        assertEquals(before, copies());
    }

    @Test
    void cancelledExportWritesNothingAndSaysSo() throws Exception {
        Path file = folder.resolve("lay.json");
        JobChangeAdapter canceller = new JobChangeAdapter() {

            @Override
            public void running(IJobChangeEvent event) {
                if (event.getJob().getName().contains("lay.json")) {
                    event.getJob().cancel();
                }
            }
        };
        Job.getJobManager().addJobChangeListener(canceller);
        try {
            run("lay", file);
            Widgets.await(() -> notice("cancelled"));
        } finally {
            Job.getJobManager().removeJobChangeListener(canceller);
        }

        assertFalse(Files.exists(file));
    }

    @Test
    void workInTheBackgroundHasAViewToBeCancelledIn() throws Exception {
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        IViewPart progress = page.showView(IPageLayout.ID_PROGRESS_VIEW);

        assertEquals("Progress", progress.getTitle());
        page.hideView(progress);
    }

    private static List<Path> copies() throws Exception {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return files.filter(file -> file.getFileName().toString().startsWith("coursewright-export")).toList();
        }
    }

    private void export(String kind, Path target) throws Exception {
        run(kind, target);
        Widgets.await(() -> notice(target.toString()));
        Widgets.select(Widgets.find(window.shell(), Link.class, link -> link.getText().contains("Dismiss")));
        assertFalse(notice(target.toString()));
    }

    private void run(String kind, Path target) throws Exception {
        window.execute(EXPORT, Map.of(EXPORT + ".kind", kind, EXPORT + ".target", target.toString()));
    }

    private boolean notice(String part) {
        return window.labels().anyMatch(text -> text.contains(part));
    }
}
