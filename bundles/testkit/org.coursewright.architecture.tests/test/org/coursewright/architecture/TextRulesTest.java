package org.coursewright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every bundle of the user interface finds its texts in properties files, and keeps none that nobody reads. */
class TextRulesTest {

    private static final SourceFile TEXTS = SourceFile.parse("WallText", """
            final class WallText extends NLS {
                private static final String FILE = "messages";
                public static String draw;
                public static String erase;
                static { NLS.initializeMessages(FILE, WallText.class); }
            }""");

    private final Repository repository = Repository.here();

    @TestFactory
    Stream<DynamicTest> bundleAndItsPropertiesNameTheSameTexts() {
        List<Bundle> bundles = repository.productBundles().stream().filter(bundle -> bundle.layer().equals("ui"))
                .toList();
        assertThat(bundles).hasSizeGreaterThanOrEqualTo(5);
        return bundles.stream().map(bundle -> DynamicTest.dynamicTest(bundle.name(), () -> assertThat(
                complaints(bundle)).isEmpty()));
    }

    @Test
    void textWithoutWordsIsReported() {
        assertThat(TextRules.textsWithoutWords(TEXTS, Set.of("draw"))).singleElement().asString().contains("erase");
        assertThat(TextRules.textsWithoutWords(TEXTS, Set.of("draw", "erase"))).isEmpty();
    }

    @Test
    void wordsWithoutTextAreReported() {
        assertThat(TextRules.wordsWithoutText(TEXTS, Set.of("draw", "erase", "mend"))).singleElement().asString()
                .contains("mend");
    }

    @Test
    void textThatNobodyShowsIsReported() {
        SourceFile view = SourceFile.parse("View",
                "class View { void show() { label.setText(WallText.draw); erase.run(); } }");
        assertThat(TextRules.textsNobodyShows(TEXTS, List.of(TEXTS, view))).singleElement().asString().contains(
                "erase");
    }

    @Test
    void textThatItsOwnClassChoosesIsShown() {
        SourceFile choosing = SourceFile.parse("SideText",
                "class SideText extends NLS { public static String left; String of(Side side) { return left; } }");
        assertThat(TextRules.textsNobodyShows(choosing, List.of(choosing))).isEmpty();
    }

    @Test
    void descriptionAndItsPropertiesThatDifferAreReported() {
        String description = "Bundle-Name: %pluginName\n<view name=\"%viewName\" class=\"View\"/>";
        assertThat(TextRules.describedOtherwise("layout.ui", description, Set.of("pluginName", "oldName"))).satisfies(
                complaints -> assertThat(complaints).hasSize(2), complaints -> assertThat(complaints.toString())
                        .contains("%viewName", "oldName"));
        assertThat(TextRules.describedOtherwise("layout.ui", description, Set.of("pluginName", "viewName"))).isEmpty();
    }

    @Test
    void classOfTextsIsKnownByItsKind() {
        assertThat(TextRules.isClassOfTexts(TEXTS)).isTrue();
        assertThat(TextRules.isClassOfTexts(SourceFile.parse("PageText", "class PageText extends Composite {}")))
                .isFalse();
    }

    private static List<String> complaints(Bundle bundle) {
        List<SourceFile> sources = bundle.sources().stream().map(SourceFile::read).toList();
        List<SourceFile> texts = sources.stream().filter(TextRules::isClassOfTexts).toList();
        Stream<String> inCode = texts.stream().flatMap(each -> complaints(each, sources));
        Stream<String> nobodys = Repository.walk(bundle.folder().resolve("src"), "messages.properties").stream()
                .filter(file -> texts.stream().noneMatch(each -> beside(each).equals(file)))
                .map(file -> file + " belongs to no class of texts.");
        return Stream.of(inCode, nobodys, description(bundle)).flatMap(each -> each).toList();
    }

    private static Stream<String> complaints(SourceFile texts, List<SourceFile> sources) {
        Set<String> keys = keys(beside(texts));
        return Stream.of(TextRules.textsWithoutWords(texts, keys), TextRules.wordsWithoutText(texts, keys),
                TextRules.textsNobodyShows(texts, sources)).flatMap(List::stream);
    }

    private static Stream<String> description(Bundle bundle) {
        Path folder = bundle.folder();
        String plugin = Files.exists(folder.resolve("plugin.xml")) ? Repository.text(folder.resolve("plugin.xml")) : "";
        return TextRules.describedOtherwise(bundle.name(), Repository.text(folder.resolve("META-INF/MANIFEST.MF"))
                + plugin, keys(folder.resolve("plugin.properties"))).stream();
    }

    private static Path beside(SourceFile texts) {
        return Path.of(texts.name()).resolveSibling("messages.properties");
    }

    /** A file that is not there has no keys, which is a complaint if code asks for some. */
    private static Set<String> keys(Path file) {
        Properties properties = new Properties();
        if (Files.exists(file)) {
            try {
                properties.load(new StringReader(Repository.text(file)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return properties.stringPropertyNames();
    }
}
