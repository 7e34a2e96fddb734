package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A project is made of schedules by the wizard, or everything is told that is wrong with them. */
class NewProjectTest {

    private static final String WALLS = """
            mark,from_x,from_y,to_x,to_y,unit,height
            W1,0,0,20',0,14x10x4,90
            W2,20',0,20',12',14x10x4,90
            """;
    private static final String OPENINGS = """
            mark,wall,kind,offset,width,sill,height
            D1,W1,door,4',36,0,81
            """;

    private final Window window = new Window();

    @TempDir
    private Path folder;

    @AfterEach
    void closeTheProject() {
        window.forgetEverything();
    }

    @Test
    void schedulesBecomeAProjectThatIsOpened() throws Exception {
        Path walls = Files.writeString(folder.resolve("walls.csv"), WALLS);
        Path openings = Files.writeString(folder.resolve("openings.csv"), OPENINGS);
        WizardFilling filling = new WizardFilling().type("Walls", walls.toString())
                .type("Openings", openings.toString()).press("Next >").type("Name", "Potting shed")
                .type("File", folder.resolve("shed").toString()).press("Finish");
        filling.inWizardOf(() -> window.choose("File", "New Project"));

        assertEquals(List.of("Wall W1", "Wall W2"),
                window.labels(window.item("Potting shed", "Building", "Storey 1")));
        assertTrue(Files.exists(folder.resolve("shed.coursewright")));
    }

    @Test
    void everythingThatIsWrongIsListedAndNothingIsWritten() throws Exception {
        Path walls = Files.writeString(folder.resolve("walls.csv"), WALLS.replace("20',12'", "20',twelve"));
        Path openings = Files.writeString(folder.resolve("openings.csv"), OPENINGS.replace("door", "gate"));
        WizardFilling filling = new WizardFilling().type("Walls", walls.toString())
                .type("Openings", openings.toString()).press("Next >").type("Name", "Potting shed")
                .type("File", folder.resolve("shed").toString()).press("Finish").press("OK").press("Cancel");
        filling.inWizardOf(() -> window.choose("File", "New Project"));

        assertTrue(filling.seen().contains("walls.csv, line 3, column to_y: \"twelve\" is not a length"),
                filling::seen);
        assertTrue(filling.seen().contains("openings.csv, line 2, column kind"), filling::seen);
        assertFalse(Files.exists(folder.resolve("shed.coursewright")));
    }

    @Test
    void fileThatDoesNotExistStopsTheFirstPage() throws Exception {
        WizardFilling filling = new WizardFilling().type("Walls", folder.resolve("none.csv").toString())
                .press("Cancel");
        filling.inWizardOf(() -> window.choose("File", "New Project"));

        assertTrue(filling.seen().contains("There is no file " + folder.resolve("none.csv")), filling::seen);
    }
}
