package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.coursewright.core.session.ProjectSession;
import org.eclipse.swt.widgets.Link;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Whoever has nothing open is offered ways to begin. */
class WelcomeTest {

    private final Window window = new Window();

    @AfterEach
    void closeTheProject() {
        window.page().closeAllEditors(false);
        window.forgetEverything();
    }

    @Test
    void linkOpensACopyOfTheDemoAmongTheSettings() throws Exception {
        window.choose("Help", "Welcome");
        Widgets.select(link("Open the demo"));

        Path file = window.active(ProjectSession::file);
        assertEquals("clinic.coursewright", file.getFileName().toString());
        assertTrue(file.getParent().endsWith("demo"), file::toString);
        assertEquals(14, window.item(name(), "Building", "Storey 1").getItemCount());
    }

    @Test
    void whatWasDoneToTheDemoIsStillThereTheNextTime() throws Exception {
        window.choose("Help", "Open Demo");
        Path file = window.active(ProjectSession::file);
        String before = Files.readString(file);
        window.forgetEverything();
        Files.writeString(file, before.replace("mark=\"W4\"", "mark=\"West\""));

        window.choose("Help", "Open Demo");
        window.item(name(), "Building", "Storey 1",
                "Wall West");
        window.forgetEverything();
        Files.writeString(file, before);
    }

    @Test
    void everyWayToBeginThatIsThereIsOffered() throws Exception {
        window.choose("Help", "Welcome");

        for (String label : new String[]{"Open the demo", "Make a project from schedules", "Open a project",
                "Read the guide"}) {
            link(label);
        }
    }

    private String name() {
        return window.active(session -> session.project().getName());
    }

    private Link link(String label) {
        return Widgets.find(window.shell(), Link.class, link -> link.getText().startsWith("<a>" + label));
    }
}
