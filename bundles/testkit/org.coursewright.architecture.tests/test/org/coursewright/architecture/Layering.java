package org.coursewright.architecture;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which bundle may use which, and what it may use from elsewhere: the picture in docs/architecture.md as a table. Enter
 * a new bundle here.
 */
final class Layering {

    private static final String[] EMF = {"org.eclipse.emf.."};
    private static final String[] XML = {"javax.xml..", "org.xml.sax..", "org.w3c.dom.."};
    private static final String[] PLATFORM = {"org.eclipse..", "org.osgi..", "jakarta.."};

    private static final List<Allowance> ALLOWANCES = List.of(
            // engines: the JDK and each other
            bundle("measure").of(),
            bundle("bond").of("measure"),
            bundle("takeoff").of("measure"),
            // model: EMF, and lengths as a data type
            bundle("model", EMF).of("measure"),
            bundle("model.edit", EMF).of("measure", "model"),
            // headless: core is the only place where model and engines meet; others see results, see ClassRules
            bundle("core", EMF, XML).of("measure", "bond", "takeoff", "model", "model.edit"),
            bundle("exchange", EMF, XML, new String[]{"org.apache.commons..", "org.apache.pdfbox..",
                    "org.apache.fontbox.."}).of("measure", "bond", "model", "model.edit", "core"),
            bundle("cli", EMF, new String[]{"org.eclipse.equinox.app..", "picocli..", "com.google.gson.."}).of(
                    "measure", "bond", "model", "model.edit", "core", "exchange"),
            // ui: plug-ins use workbench and diagram.ui, never one another
            bundle("workbench", PLATFORM).of("measure", "bond", "model", "model.edit", "core", "exchange", "cli"),
            bundle("help", PLATFORM).of(),
            bundle("diagram.ui", PLATFORM).of("measure", "model", "model.edit", "core", "workbench"),
            bundle("layout.ui", PLATFORM).of("measure", "bond", "model", "model.edit", "core", "workbench",
                    "diagram.ui"),
            bundle("estimate.ui", PLATFORM).of("measure", "model", "model.edit", "core", "exchange", "workbench",
                    "diagram.ui"));

    /** What one bundle may use: own bundles by full name, other packages as ArchUnit patterns. */
    record Allowance(String bundle, Set<String> bundles, List<String> packages) {

        private Allowance of(String... shortNames) {
            return new Allowance(bundle, Stream.of(shortNames).map(Layering::full).collect(Collectors.toSet()),
                    packages);
        }
    }

    private Layering() {
    }

    static Map<String, Allowance> byBundle() {
        return ALLOWANCES.stream().collect(Collectors.toMap(Allowance::bundle, Function.identity()));
    }

    private static Allowance bundle(String shortName, String[]... packages) {
        return new Allowance(full(shortName), Set.of(), Stream.concat(Stream.of("java.."), Stream.of(packages).flatMap(
                Stream::of)).toList());
    }

    private static String full(String shortName) {
        return "org.coursewright." + shortName;
    }
}
