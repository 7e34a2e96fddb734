package org.coursewright.core.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;

import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProjectStoreTest {

    private final ProjectStore store = new ProjectStore();

    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void nameFile() {
        file = folder.resolve("row.coursewright");
    }

    @Test
    void savedProjectLoadsAsTheSame() throws ProjectFileException {
        Project project = SampleProjects.ofWalls(14);
        store.save(project, file);
        assertThat(EcoreUtil.equals(store.load(file), project)).isTrue();
    }

    @Test
    void everyFeatureOfEveryElementSurvives() throws ProjectFileException {
        Project project = new FullProject().make();
        store.save(project, file);
        assertThat(EcoreUtil.equals(store.load(file), project)).isTrue();
    }

    @Test
    void savingWhatWasLoadedGivesTheSameBytes() throws ProjectFileException {
        store.save(new FullProject().make(), file);
        Path again = folder.resolve("again.coursewright");
        store.save(store.load(file), again);
        assertThat(again).hasSameBinaryContentAs(file);
    }

    @Test
    void eachElementHasItsLine() throws ProjectFileException, IOException {
        store.save(SampleProjects.ofWalls(2), file);
        String text = Files.readString(file);
        assertThat(text).endsWith(">\n").doesNotContain("\r");
        List<String> lines = text.lines().toList();
        assertThat(lines).allMatch(line -> line.chars().filter(c -> c == '<').count() <= 1
                || line.strip().startsWith("<specialLengths>"));
        assertThat(lines).filteredOn(line -> line.strip().startsWith("<walls ")).hasSize(2)
                .allMatch(
                        line -> line.matches(" +<walls xmi:id=\"[^\"]+\" mark=.* fromY=.* toX=.* toY=.* unitType=.*"));
    }

    @Test
    void seededIdsMakeTheSameFileTwice() throws ProjectFileException {
        store.save(SampleProjects.ofWalls(5), file);
        Path again = folder.resolve("again.coursewright");
        store.save(SampleProjects.ofWalls(5), again);
        assertThat(again).hasSameBinaryContentAs(file);
    }

    @Test
    void seededIdsAreDistinct() throws ProjectFileException, IOException {
        store.save(SampleProjects.ofWalls(50), file);
        List<String> ids = Files.readString(file).lines().filter(line -> line.contains("xmi:id="))
                .map(line -> line.replaceAll(".*xmi:id=\"([^\"]+)\".*", "$1")).toList();
        assertThat(ids).hasSizeGreaterThan(90).doesNotHaveDuplicates();
    }

    @Test
    void idsOfAProjectInAFileAreNotSeededAgain() throws ProjectFileException {
        store.save(SampleProjects.ofWalls(1), file);
        Project loaded = store.load(file);
        assertThatThrownBy(() -> ElementIds.seed(loaded)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void unseededIdsAreRandom() throws ProjectFileException, IOException {
        Project project = ProjectFactory.eINSTANCE.createProject();
        project.setSite(ProjectFactory.eINSTANCE.createSite());
        Project copy = EcoreUtil.copy(project);
        store.save(project, file);
        Path other = folder.resolve("other.coursewright");
        store.save(copy, other);
        assertThat(Files.readString(other)).isNotEqualTo(Files.readString(file));
    }

    @Test
    void danglingReferenceIsNotSaved() throws ProjectFileException, IOException {
        Project project = SampleProjects.ofWalls(1);
        store.save(project, file);
        byte[] before = Files.readAllBytes(file);
        project.getCatalogue().getUnitTypes().clear();
        assertThatThrownBy(() -> store.save(project, file)).isInstanceOf(ProjectFileException.class)
                .hasMessageContaining("no longer in it").hasMessageNotContaining("Exception");
        assertThat(file).hasBinaryContent(before);
        assertOnlyTheProjectIsThere();
    }

    @Test
    void controlCharacterIsNotSaved() {
        Project project = SampleProjects.ofWalls(1);
        project.setName("bell \u0007");
        assertThatThrownBy(() -> store.save(project, file)).isInstanceOf(ProjectFileException.class)
                .hasMessageContaining("control character");
        assertThat(file).doesNotExist();
    }

    @Test
    void failedSaveLeavesNothingBehind() throws IOException {
        Path taken = Files.createDirectories(folder.resolve("taken.coursewright"));
        Files.writeString(taken.resolve("inside"), "so that the folder cannot be replaced");
        assertThatThrownBy(() -> store.save(SampleProjects.ofWalls(1), taken)).isInstanceOf(ProjectFileException.class)
                .hasMessageContaining("cannot be saved here");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(taken);
        }
    }

    @Test
    void missingFolderIsNamed() {
        Path nowhere = folder.resolve("missing").resolve("a.coursewright");
        assertThatThrownBy(() -> store.save(SampleProjects.ofWalls(1), nowhere))
                .isInstanceOf(ProjectFileException.class).hasMessageContaining(nowhere.toString());
    }

    @Test
    void permissionsAreKept() throws ProjectFileException, IOException {
        store.save(SampleProjects.ofWalls(1), file);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
        store.save(SampleProjects.ofWalls(2), file);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file))).isEqualTo("rw-rw----");
        assertOnlyTheProjectIsThere();
    }

    @Test
    void symbolicLinkStaysALink() throws ProjectFileException, IOException {
        store.save(SampleProjects.ofWalls(1), file);
        Path link = Files.createSymbolicLink(folder.resolve("link.coursewright"), file);
        store.save(SampleProjects.ofWalls(2), link);
        assertThat(link).isSymbolicLink();
        assertThat(SampleProjects.walls(store.load(file))).hasSize(2);
    }

    @Test
    void textInAnyScriptSurvives() throws ProjectFileException, IOException {
        Project project = SampleProjects.ofWalls(1);
        project.setName("Größe <&\"'> \n\t 壁 \uD83E\uDDF1");
        store.save(project, file);
        assertThat(store.load(file).getName()).isEqualTo(project.getName());
        assertThat(Files.readString(file, StandardCharsets.UTF_8)).contains("Größe", "壁");
    }

    private void assertOnlyTheProjectIsThere() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }
}
