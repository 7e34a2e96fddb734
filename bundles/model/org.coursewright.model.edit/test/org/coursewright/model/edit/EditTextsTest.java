package org.coursewright.model.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;

import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.programme.ProgrammePackage;
import org.coursewright.model.project.ProjectPackage;
import org.coursewright.model.proposal.ProposalPackage;
import org.coursewright.model.register.RegisterPackage;
import org.coursewright.model.supply.SupplyPackage;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Everything that people see has a text, and the texts are about what there is. */
class EditTextsTest {

    static Stream<EClass> kinds() {
        return Stream.of(ProjectPackage.eINSTANCE, BuildingPackage.eINSTANCE, CataloguePackage.eINSTANCE,
                EstimatePackage.eINSTANCE, ProgrammePackage.eINSTANCE, SupplyPackage.eINSTANCE,
                RegisterPackage.eINSTANCE, ProposalPackage.eINSTANCE).flatMap(each -> each.getEClassifiers().stream())
                .filter(EClass.class::isInstance).map(EClass.class::cast).filter(each -> !each.isAbstract());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyKindAndPropertyIsDescribed(EClass kind) {
        assertThat(ElementLabels.of(kind)).isNotBlank();
        for (PropertyDescriptor property : PropertyDescriptors.of(kind)) {
            assertThat(property.label()).isNotBlank();
            assertThat(property.group()).isNotBlank();
            assertThat(property.help()).endsWith(".");
            if (property.kind() == ValueKind.CHOICE) {
                assertThat(PropertyText.choices(property)).isNotEmpty()
                        .allSatisfy(choice -> assertThat(ElementLabels.of(choice)).isNotBlank());
            }
        }
        assertThat(PropertyDescriptors.of(kind)).extracting(PropertyDescriptor::label).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(ValueRule.class)
    void everyRuleHasItsRefusal(ValueRule rule) {
        assertThat(EditTexts.of("refusal.value." + rule, "a", "b", "c")).contains("a", "b").endsWith(".");
    }

    @ParameterizedTest
    @EnumSource(ValueKind.class)
    void everyKindOfValueSaysWhatCanBeRead(ValueKind kind) {
        assertThat(EditTexts.of("refusal.unreadable." + kind, "a", "b", "c")).contains("a", "b").endsWith(".");
    }

    @Test
    void everyTextIsAboutSomething() {
        Set<String> used = new HashSet<>();
        kinds().forEach(kind -> {
            used.add("kind." + kind.getName());
            for (PropertyDescriptor property : PropertyDescriptors.of(kind)) {
                EStructuralFeature feature = property.feature();
                used.add(feature.getEContainingClass().getName() + "." + feature.getName());
            }
        });
        List<String> unknown = ResourceBundle.getBundle("org.coursewright.model.edit.texts").keySet().stream()
                .filter(key -> key.startsWith("kind.") && !used.contains(key) || key.startsWith("property.")
                        && !used.contains(key.replaceAll("property\\.(\\w+\\.\\w+)\\.\\w+", "$1")))
                .toList();
        assertThat(unknown).isEmpty();
    }

    /** The Ecore model is the one source of what a property means; generated code does not carry it. */
    @Test
    void helpIsTheDocumentationOfTheModel() throws Exception {
        Map<String, String> documentation = documentation();
        kinds().forEach(kind -> PropertyDescriptors.of(kind).forEach(property -> {
            EStructuralFeature feature = property.feature();
            assertThat(property.help()).as(feature.getName())
                    .isEqualTo(documentation.get(feature.getEContainingClass().getName() + "." + feature.getName()));
        }));
    }

    private static Map<String, String> documentation() throws Exception {
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        Map<String, String> found = new HashMap<>();
        try (Stream<Path> files = Files.list(Path.of("../org.coursewright.model/model"))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".ecore")).toList()) {
                NodeList features = builder.parse(file.toFile()).getElementsByTagName("eStructuralFeatures");
                for (int i = 0; i < features.getLength(); i++) {
                    Element feature = (Element) features.item(i);
                    String kind = ((Element) feature.getParentNode()).getAttribute("name");
                    found.put(kind + "." + feature.getAttribute("name"), documentation(feature));
                }
            }
        }
        return found;
    }

    private static String documentation(Element feature) {
        return ((Element) feature.getElementsByTagName("details").item(0)).getAttribute("value");
    }
}
