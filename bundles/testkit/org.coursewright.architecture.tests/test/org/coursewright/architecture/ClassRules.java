package org.coursewright.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameEndingWith;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

import org.coursewright.architecture.Layering.Allowance;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.PackageMatchers;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;

/** What compiled classes may use. */
final class ClassRules {

    private static final Pattern INTERNAL = Pattern.compile("\\.internal(\\..*)?$");

    private ClassRules() {
    }

    /**
     * The classes of a bundle use its own packages, the bundles it is allowed and the packages it is allowed.
     *
     * @param bundles
     *            the names of all own bundles: the longest that a package begins with owns it
     */
    static ArchRule usesOnlyWhatIsAllowed(Allowance allowance, Set<String> bundles) {
        PackageMatchers foreign = PackageMatchers.of(allowance.packages());
        return classes().should().onlyDependOnClassesThat(describe("it is allowed in Layering", used -> {
            JavaClass type = used.getBaseComponentType();
            return type.isPrimitive() || owner(type, bundles).map(owner -> owner.equals(allowance.bundle())
                    || allowance.bundles().contains(owner)).orElseGet(() -> foreign.test(type.getPackageName()));
        })).as(allowance.bundle() + " uses only what Layering allows: " + allowance.bundles() + " and "
                + allowance.packages());
    }

    private static Optional<String> owner(JavaClass type, Set<String> bundles) {
        String dotted = type.getPackageName() + ".";
        return bundles.stream().filter(bundle -> dotted.startsWith(bundle + ".")).max(Comparator.comparing(
                String::length));
    }

    /** An engine is asked by core alone; others see its results. */
    static ArchRule asksNoEngine(String... engines) {
        return noClasses().should()
                .dependOnClassesThat(resideInAnyPackage(engines).and(simpleNameEndingWith("Request")));
    }

    /** Standard output and error belong to the command line alone. */
    static ArchRule noStandardStreams() {
        return noClasses().should(GeneralCodingRules.ACCESS_STANDARD_STREAMS);
    }

    static ArchRule noPrintStackTrace() {
        return noClasses().should().callMethodWhere(target(name("printStackTrace")));
    }

    static ArchRule noJavaUtilLogging() {
        return noClasses().should().dependOnClassesThat().resideInAPackage("java.util.logging..");
    }

    /**
     * Packages of one bundle do not depend on each other in a circle. A package and its own {@code internal} count as one:
     * the entry makes what is behind it, and that speaks in the entry's terms.
     */
    static ArchRule noPackageCycles() {
        return noCycles("packages", name -> SliceIdentifier.of(name.replaceFirst("\\.internal$", "")));
    }

    /** The same where all that lies behind an entry, in packages below {@code internal} too, counts as one with it. */
    static ArchRule noEntryCycles() {
        return noCycles("entries", name -> SliceIdentifier.of(INTERNAL.matcher(name).replaceFirst("")));
    }

    /** Packages that lie behind entries form no circle by themselves either. */
    static ArchRule noInternalPackageCycles() {
        return noCycles("internal packages",
                name -> INTERNAL.matcher(name).find() ? SliceIdentifier.of(name) : SliceIdentifier.ignore());
    }

    private static ArchRule noCycles(String description, Function<String, SliceIdentifier> byPackage) {
        return SlicesRuleDefinition.slices().assignedFrom(new ByPackage(description, byPackage)).should()
                .beFreeOfCycles();
    }

    private record ByPackage(String description, Function<String, SliceIdentifier> byName) implements SliceAssignment {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
            return byName.apply(type.getPackageName());
        }

        @Override
        public String getDescription() {
            return description;
        }
    }
}
