package org.coursewright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

import org.junit.jupiter.api.Test;

class ManifestRulesTest {

    private static final Bundle BAD = Bundle.of(Path.of("bundles/engines/org.coursewright.bond"), """
            Bundle-SymbolicName: org.coursewright.bond;singleton:=true
            Require-Bundle: org.coursewright.measure;bundle-version="[0.1.0,1.0.0)",
             org.coursewright.model,
             org.eclipse.jface;bundle-version="3.35.0"
            Import-Package: org.eclipse.swt.widgets;resolution:=optional
            Export-Package: org.coursewright.bond,org.coursewright.bonding
            """);

    private final Repository repository = Repository.here();

    @Test
    void noManifestBelowTheUserInterfaceNeedsIt() {
        assertThat(complaints(bundle -> bundle.layer().equals("ui")
                ? List.of()
                : ManifestRules.uiNeededBelowTheUi(bundle))).isEmpty();
    }

    @Test
    void needOfTheUserInterfaceIsReported() {
        assertThat(ManifestRules.uiNeededBelowTheUi(BAD)).hasSize(2).anyMatch(line -> line.contains("jface")).anyMatch(
                line -> line.contains("swt.widgets"));
    }

    @Test
    void manifestsKeepToTheLayering() {
        assertThat(complaints(bundle -> ManifestRules.edgesNotAllowed(bundle, Layering.byBundle()))).isEmpty();
    }

    @Test
    void edgeOutsideTheLayeringIsReported() {
        assertThat(ManifestRules.edgesNotAllowed(BAD, Layering.byBundle())).singleElement().asString().contains(
                "requires org.coursewright.model,");
    }

    @Test
    void requirementsStateTheirVersions() {
        assertThat(repository.bundles().stream().map(ManifestRules::requirementsWithoutRange).flatMap(List::stream))
                .isEmpty();
    }

    @Test
    void requirementWithoutRangeIsReported() {
        assertThat(ManifestRules.requirementsWithoutRange(BAD)).hasSize(2).anyMatch(line -> line.contains(
                "requires org.coursewright.model ")).anyMatch(line -> line.contains("requires org.eclipse.jface "));
    }

    @Test
    void exportsBeginWithTheBundlesName() {
        assertThat(complaints(ManifestRules::exportsOutsideTheName)).isEmpty();
    }

    @Test
    void exportUnderAnotherNameIsReported() {
        assertThat(ManifestRules.exportsOutsideTheName(BAD)).singleElement().asString().contains(
                "org.coursewright.bonding");
    }

    private List<String> complaints(Function<Bundle, List<String>> rule) {
        return repository.productBundles().stream().map(rule).flatMap(List::stream).toList();
    }
}
