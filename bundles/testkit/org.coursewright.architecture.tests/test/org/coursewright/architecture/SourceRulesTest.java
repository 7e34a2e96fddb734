package org.coursewright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

class SourceRulesTest {

    private final Repository repository = Repository.here();

    @Test
    void everyPublicTypeOfTheProgrammingInterfaceIsDocumented() {
        Set<String> exported = repository.productBundles().stream()
                .flatMap(bundle -> bundle.exportedPackages().stream())
                .map(Clause::name).collect(Collectors.toSet());
        List<SourceFile> api = productSources().filter(file -> exported.contains(file.packageName())).toList();
        assertThat(api).isNotEmpty();
        assertThat(complaints(api.stream(), SourceRules::publicTypesWithoutJavadoc)).isEmpty();
    }

    @Test
    void undocumentedPublicTypeIsReported() {
        assertThat(SourceRules.publicTypesWithoutJavadoc(source("public record Course(int number) {}"))).hasSize(1);
        assertThat(SourceRules.publicTypesWithoutJavadoc(source("/** */ public record Course(int number) {}"))).hasSize(
                1);
        assertThat(SourceRules.publicTypesWithoutJavadoc(source("/* no */ @Deprecated public enum Bond { }"))).hasSize(
                1);
        assertThat(SourceRules.publicTypesWithoutJavadoc(source(
                "/** A row of units. */ @Deprecated public record Course(int number) {} class Other {}"))).isEmpty();
    }

    @Test
    void namesSayWhatAThingIs() {
        assertThat(complaints(Stream.concat(productSources(), testSources()), SourceRules::vagueNames)).isEmpty();
    }

    @Test
    void vagueNameIsReported() {
        assertThat(SourceRules.vagueNames(source("class LengthUtils {}"))).hasSize(1);
        assertThat(SourceRules.vagueNames(source("interface ISession {}"))).hasSize(1);
        assertThat(SourceRules.vagueNames(source("class SessionImpl {}"))).hasSize(1);
        assertThat(SourceRules.vagueNames(source("package org.coursewright.core.util; class Length {}"))).hasSize(1);
        assertThat(SourceRules.vagueNames(source("package org.coursewright.core; class Item {} class Utility {}")))
                .isEmpty();
    }

    @Test
    void everyTestIsFoundByItsName() {
        List<SourceFile> tests = testSources().toList();
        assertThat(tests).isNotEmpty();
        assertThat(complaints(tests.stream(), SourceRules::testsThatWouldNotRun)).isEmpty();
    }

    @Test
    void testUnderAnotherNameIsReported() {
        assertThat(SourceRules.testsThatWouldNotRun(source("class LengthTests { @Test void adds() {} }"))).hasSize(1);
        assertThat(SourceRules.testsThatWouldNotRun(source(
                "class LengthCheck { @org.junit.jupiter.params.ParameterizedTest void adds() {} }"))).hasSize(1);
        assertThat(SourceRules.testsThatWouldNotRun(source(
                "class LengthTest { @Test void adds() {} } class Builder { void build() {} }"))).isEmpty();
    }

    @Test
    void userInterfaceKeepsItsTextsInPropertiesFiles() {
        Stream<SourceFile> ui = repository.productBundles().stream().filter(bundle -> bundle.layer().equals("ui"))
                .flatMap(bundle -> bundle.sources().stream()).map(SourceFile::read);
        assertThat(complaints(ui, SourceRules::textsInCode)).isEmpty();
    }

    @Test
    void textInCodeIsReported() {
        assertThat(SourceRules.textsInCode(inMethod("label.setText(\"Length of wall\");"))).hasSize(1);
        assertThat(SourceRules.textsInCode(inMethod("setMessage(\"wall \" + mark);"))).hasSize(1);
        assertThat(SourceRules.textsInCode(inMethod("new Status(ERROR, ID, \"Cannot save\");"))).hasSize(1);
        assertThat(SourceRules.textsInCode(inMethod(
                "label.setText(Messages.length); setText(\"\"); setText(text(\"wall.length\")); find(\"Wall\");")))
                .isEmpty();
    }

    private Stream<SourceFile> productSources() {
        return repository.productBundles().stream().flatMap(bundle -> bundle.sources().stream()).map(SourceFile::read);
    }

    /** The test folders beside the sources, and the sources of bundles of tests. */
    private Stream<SourceFile> testSources() {
        return repository.filesEnding(".java").stream().filter(SourceRulesTest::isTestCode).map(SourceFile::read);
    }

    private static boolean isTestCode(Path file) {
        String path = file.toString().replace('\\', '/');
        return path.contains("/test/") || path.contains(".tests/src/");
    }

    private static List<String> complaints(Stream<SourceFile> files, Function<SourceFile, List<String>> rule) {
        return files.map(rule).flatMap(List::stream).toList();
    }

    private static SourceFile inMethod(String statements) {
        return source("class View { void show() { " + statements + " } }");
    }

    private static SourceFile source(String text) {
        return SourceFile.parse("fixture", text);
    }
}
