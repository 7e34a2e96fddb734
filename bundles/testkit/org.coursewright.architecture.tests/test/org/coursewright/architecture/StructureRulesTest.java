package org.coursewright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

import org.junit.jupiter.api.Test;

class StructureRulesTest {

    private final Repository repository = Repository.here();

    @Test
    void everyBundleAndFeatureIsBuilt() {
        List<String> folders = repository.moduleFolders().stream().map(folder -> folder.toString().replace('\\', '/'))
                .toList();
        assertThat(folders).hasSizeGreaterThan(10);
        assertThat(StructureRules.foldersNotBuilt(folders, read(repository.root().resolve("pom.xml")))).isEmpty();
    }

    @Test
    void folderThatIsNotBuiltIsReported() {
        Xml pom = Xml.parse("<project><modules><module>bundles/a/one</module></modules></project>");
        assertThat(StructureRules.foldersNotBuilt(List.of("bundles/a/one", "bundles/a/two"), pom)).singleElement()
                .asString().startsWith("bundles/a/two");
    }

    @Test
    void featuresIncludeWhatExists() {
        Set<String> known = new HashSet<>(repository.bundles().stream().map(Bundle::name).toList());
        repository.features().forEach(feature -> known.add(feature.getParent().getFileName().toString()));
        assertThat(complaints(repository.features(), feature -> StructureRules.unknownPartsOf(feature.toString(), read(
                feature), known))).isEmpty();
    }

    @Test
    void unknownPartOfAFeatureIsReported() {
        Xml feature = Xml.parse("<feature><plugin id='org.coursewright.gone'/><includes id='org.coursewright.here'/>"
                + "<plugin id='org.eclipse.gef'/></feature>");
        assertThat(StructureRules.unknownPartsOf("feature", feature, Set.of("org.coursewright.here"))).singleElement()
                .asString().contains("org.coursewright.gone");
    }

    @Test
    void everyProductBundleIsInAFeature() {
        List<Xml> features = repository.features().stream().map(StructureRulesTest::read).toList();
        assertThat(StructureRules.bundlesInNoFeature(repository.productBundles().stream().map(Bundle::name).toList(),
                features)).isEmpty();
    }

    @Test
    void bundleInNoFeatureIsReported() {
        Xml feature = Xml.parse("<feature><plugin id='one'/></feature>");
        assertThat(StructureRules.bundlesInNoFeature(List.of("one", "two"), List.of(feature))).singleElement()
                .asString().startsWith("two");
    }

    @Test
    void classesNamedInPluginDescriptionsExist() {
        Set<String> classes = new HashSet<>();
        repository.bundles().forEach(bundle -> Repository.walk(bundle.classes(), ".class").forEach(file -> classes.add(
                className(bundle.classes().relativize(file)))));
        List<Path> plugins = repository.bundles().stream().map(bundle -> bundle.folder().resolve("plugin.xml")).filter(
                Files::exists).toList();
        assertThat(plugins).isNotEmpty();
        assertThat(complaints(plugins, plugin -> StructureRules.classesNotThere(plugin.toString(), read(plugin),
                classes::contains))).isEmpty();
    }

    @Test
    void classThatDoesNotExistIsReported() {
        Xml plugin = Xml.parse("<plugin><run class='org.coursewright.cli.Gone:argument'/>"
                + "<view class='org.coursewright.workbench.Here'/><view class='org.eclipse.ui.Foreign'/></plugin>");
        assertThat(StructureRules.classesNotThere("plugin.xml", plugin, Set.of(
                "org.coursewright.workbench.Here")::contains)).singleElement().asString().contains(
                        "org.coursewright.cli.Gone,");
    }

    @Test
    void extensionPointsAreDocumented() {
        assertThat(complaints(repository.filesEnding(".exsd"), schema -> StructureRules.undocumentedIn(schema
                .toString(), read(schema)))).isEmpty();
    }

    @Test
    void undocumentedExtensionPointIsReported() {
        Xml schema = Xml.parse("<schema><documentation> </documentation><documentation>[Enter description of this"
                + " extension point.]</documentation><documentation>A unit type.</documentation></schema>");
        assertThat(StructureRules.undocumentedIn("units.exsd", schema)).hasSize(2);
    }

    private static String className(Path relative) {
        return relative.toString().replace('\\', '.').replace('/', '.').replaceFirst("\\.class$", "");
    }

    private static Xml read(Path file) {
        return Xml.parse(Repository.text(file));
    }

    private static <T> List<String> complaints(List<T> things, Function<T, List<String>> rule) {
        return things.stream().map(rule).flatMap(List::stream).toList();
    }
}
