package org.coursewright.core.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.coursewright.measure.Length;
import org.coursewright.model.project.Project;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** There was no version 0; one is made up here, in which walls had their length and no unit in their lengths. */
class MigrationTest {

    private static final String VERSION_0 = """
            <?xml version="1.0" encoding="UTF-8"?>
            <project:Job xmlns:xmi="http://www.omg.org/XMI" xmlns:project="http://coursewright.org/project/0" name="Old">
              <building xmi:id="_b">
                <storeys xmi:id="_s" mark="G">
                  <walls xmi:id="_w" mark="W1" length="2540"/>
                </storeys>
              </building>
            </project:Job>
            """;

    @TempDir
    private Path folder;

    /** From the made-up version 0 to version 1. */
    private static final class FromVersion0 implements Migration {
        @Override
        public int fromVersion() {
            return 0;
        }

        @Override
        public Document migrate(Document project) {
            project.renameNode(project.getDocumentElement(), "http://coursewright.org/project/1", "project:Project");
            NodeList walls = project.getElementsByTagName("walls");
            for (int i = 0; i < walls.getLength(); i++) {
                Element wall = (Element) walls.item(i);
                wall.setAttribute("toX", wall.getAttribute("length") + " mm");
                wall.removeAttribute("length");
            }
            return project;
        }
    }

    private Path oldFile(String content) throws IOException {
        return Files.writeString(folder.resolve("old.coursewright"), content);
    }

    @Test
    void olderFileIsConverted() throws IOException, ProjectFileException {
        Project project = new ProjectStore(List.of(new FromVersion0())).load(oldFile(VERSION_0));
        assertThat(project.getName()).isEqualTo("Old");
        assertThat(SampleProjects.walls(project)).singleElement()
                .satisfies(wall -> assertThat(wall.getToX()).isEqualTo(Length.ofMillimetres(2540)));
    }

    @Test
    void convertedFileKeepsItsIdsAndIsSavedInTheCurrentForm() throws IOException, ProjectFileException {
        Path file = oldFile(VERSION_0);
        ProjectStore store = new ProjectStore(List.of(new FromVersion0()));
        store.save(store.load(file), file);
        assertThat(Files.readString(file)).contains("coursewright.org/project/1", "xmi:id=\"_w\"", "toX=\"2540 mm\"");
        assertThat(new ProjectStore().load(file).getName()).isEqualTo("Old");
    }

    @Test
    void faultInAnOlderFileIsNamedWithoutALineOfTheConvertedForm() throws IOException {
        Path file = oldFile(VERSION_0.replace("\"2540\"", "\"long\""));
        assertThatThrownBy(() -> new ProjectStore(List.of(new FromVersion0())).load(file))
                .isInstanceOfSatisfying(ProjectFileException.class, e -> assertThat(e.line()).isEmpty())
                .hasMessageContaining("the toX of Wall W1 cannot be \"long mm\"");
    }

    @Test
    void olderFileWithoutAWayIsRefused() throws IOException {
        Path file = oldFile(VERSION_0);
        assertThatThrownBy(() -> new ProjectStore().load(file)).isInstanceOf(ProjectFileException.class)
                .hasMessageContaining("schema version 0");
    }

    @Test
    void stepThatLeavesTheVersionIsRefused() throws IOException {
        Path file = oldFile(VERSION_0);
        Migration idle = new Migration() {
            @Override
            public int fromVersion() {
                return 0;
            }

            @Override
            public Document migrate(Document project) {
                return project;
            }
        };
        assertThatThrownBy(() -> new ProjectStore(List.of(idle)).load(file)).isInstanceOf(ProjectFileException.class);
    }
}
