package org.coursewright.architecture;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.coursewright.architecture.Layering.Allowance;

/** What manifests may say. Each rule returns one line of complaint for each breach. */
final class ManifestRules {

    private static final List<String> UI = List.of("org.eclipse.ui", "org.eclipse.swt", "org.eclipse.jface",
            "org.eclipse.gef", "org.eclipse.draw2d", "org.eclipse.e4.ui");

    private ManifestRules() {
    }

    /** A window toolkit is named nowhere below the user interface, not even in a manifest. */
    static List<String> uiNeededBelowTheUi(Bundle bundle) {
        return Stream.concat(bundle.requiredBundles().stream(), bundle.importedPackages().stream()).map(Clause::name)
                .filter(name -> UI.stream().anyMatch(ui -> name.equals(ui) || name.startsWith(ui + ".")))
                .map(name -> bundle.name() + " needs " + name + ", which belongs to the user interface.").toList();
    }

    /** Own bundles are required along the allowed edges only. */
    static List<String> edgesNotAllowed(Bundle bundle, Map<String, Allowance> allowances) {
        Set<String> allowed = allowances.containsKey(bundle.name())
                ? allowances.get(bundle.name()).bundles()
                : Set.of();
        return bundle.requiredBundles().stream().map(Clause::name).filter(ManifestRules::isOwn).filter(
                name -> !allowed.contains(name)).map(
                        name -> bundle.name() + " requires " + name
                                + ", which Layering does not allow.")
                .toList();
    }

    /** A bundle that is required is required in a range of versions, floor and ceiling. */
    static List<String> requirementsWithoutRange(Bundle bundle) {
        return bundle.requiredBundles().stream()
                .filter(clause -> !clause.parameter("bundle-version").orElse("").matches(
                        "\\[[0-9.]+,[0-9.]+\\)"))
                .map(clause -> bundle.name() + " requires " + clause.name()
                        + " without a range such as [0.1.0,1.0.0).")
                .toList();
    }

    /** What is exported starts with the bundle's own name, so that a package tells its bundle. */
    static List<String> exportsOutsideTheName(Bundle bundle) {
        return bundle.exportedPackages().stream().map(Clause::name).filter(name -> !name.equals(bundle.name())
                && !name.startsWith(bundle.name() + ".")).map(name -> bundle.name() + " exports " + name
                        + ", which does not begin with its name.")
                .toList();
    }

    private static boolean isOwn(String name) {
        return name.startsWith("org.coursewright.");
    }
}
