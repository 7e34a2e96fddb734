package org.coursewright.architecture;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.w3c.dom.Element;

/** That build files, features, plug-in descriptions and schemas agree with what is there. */
final class StructureRules {

    /** Attributes of plugin.xml that name a class. */
    private static final List<String> CLASS_ATTRIBUTES = List.of("class", "run", "contributorClass", "defaultHandler",
            "implementation", "factory", "adapter");
    private static final String OWN = "org.coursewright.";

    private StructureRules() {
    }

    /** Every folder that should be built is a module of the root POM. */
    static List<String> foldersNotBuilt(Collection<String> folders, Xml pom) {
        Set<String> modules = pom.elements("module").stream().map(Element::getTextContent).map(String::strip).collect(
                Collectors.toSet());
        return folders.stream().filter(folder -> !modules.contains(folder)).map(folder -> folder
                + " is no module of the root pom.xml, so it is never built.").toList();
    }

    /** A feature includes nothing of ours that does not exist. */
    static List<String> unknownPartsOf(String feature, Xml xml, Set<String> known) {
        return parts(xml).filter(id -> id.startsWith(OWN)).filter(id -> !known.contains(id)).map(id -> feature
                + " includes " + id + ", which is not in the repository.").toList();
    }

    /** A bundle of the product is in some feature; otherwise the product lacks it. */
    static List<String> bundlesInNoFeature(Collection<String> bundles, Collection<Xml> features) {
        Set<String> included = features.stream().flatMap(StructureRules::parts).collect(Collectors.toSet());
        return bundles.stream().filter(bundle -> !included.contains(bundle)).map(bundle -> bundle
                + " is in no feature, so the product lacks it.").toList();
    }

    /** A class of ours that a plugin.xml names exists. */
    static List<String> classesNotThere(String plugin, Xml xml, Predicate<String> exists) {
        return xml.attributes(CLASS_ATTRIBUTES).stream().map(value -> value.split("[:/]")[0]).filter(
                name -> name.startsWith(OWN)).filter(exists.negate()).map(
                        name -> plugin + " names the class " + name
                                + ", which does not exist.")
                .toList();
    }

    /** A schema of an extension point explains itself: no documentation is empty or the template's own. */
    static List<String> undocumentedIn(String schema, Xml xml) {
        return xml.elements("documentation").stream().map(Element::getTextContent).map(String::strip).filter(
                text -> text.isEmpty() || text.startsWith("[Enter")).map(
                        text -> schema
                                + " has documentation that is empty or still the template's.")
                .toList();
    }

    private static Stream<String> parts(Xml feature) {
        return Stream.of("plugin", "includes").flatMap(tag -> feature.elements(tag).stream()).map(
                element -> element.getAttribute("id"));
    }
}
