package org.coursewright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

class DocumentRulesTest {

    private final Path root = Repository.here().root();

    @Test
    void documentsPointToWhatExists() {
        List<Path> documents = Stream.concat(Stream.of(root.resolve("README.md"), root.resolve("DEVELOPERS.md")),
                Repository.walk(root.resolve("docs"), ".md").stream()).toList();
        assertThat(documents).hasSizeGreaterThan(5);
        assertThat(documents.stream().flatMap(document -> DocumentRules.brokenLinks(root.relativize(document)
                .toString(), Repository.text(document), link -> Files.exists(document.resolveSibling(link))).stream()))
                .isEmpty();
    }

    @Test
    void linkToNothingIsReported() {
        String text = "[a](here.md) [b](gone.md#part) ![c](gone.png) [d](https://example.org/x) [e](#part)";
        assertThat(DocumentRules.brokenLinks("fixture", text, Set.of("here.md")::contains)).hasSize(2);
    }

    @Test
    void everyBundleIsOnThePageOfArchitecture() {
        assertThat(DocumentRules.bundlesNotIn(Repository.text(root.resolve("docs/architecture.md")), Repository.here()
                .productBundles().stream().map(Bundle::name).toList())).isEmpty();
    }

    @Test
    void bundleThatIsNotNamedIsReported() {
        assertThat(DocumentRules.bundlesNotIn("the bundle `a.model.edit` edits", List.of("a.model", "a.model.edit")))
                .singleElement().asString().contains("a.model.");
    }

    @Test
    void everyDecisionIsListed() {
        Path decisions = root.resolve("docs/decisions");
        String list = Repository.text(decisions.resolve("README.md"));
        assertThat(Repository.walk(decisions, ".md")).map(file -> file.getFileName().toString()).filteredOn(
                name -> !name.equals("README.md")).isNotEmpty().allMatch(list::contains).allMatch(name -> name.matches(
                        "\\d{4}-\\d{2}-\\d{2}-[a-z0-9-]+\\.md"));
    }
}
