package org.coursewright.architecture;

import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** That documents speak of what is there. */
final class DocumentRules {

    private static final Pattern LINK = Pattern.compile("]\\(([^)\\s]+)\\)");

    private DocumentRules() {
    }

    /** A link to a file of the repository leads to one. */
    static List<String> brokenLinks(String document, String text, Predicate<String> exists) {
        return LINK.matcher(text).results().map((MatchResult link) -> link.group(1)).filter(link -> !link.matches(
                "[a-z]+:.*|#.*")).map(link -> link.replaceFirst("#.*", "")).filter(exists.negate()).map(
                        link -> document + " points to " + link + ", which does not exist.")
                .toList();
    }

    /** The page on architecture names every bundle. */
    static List<String> bundlesNotIn(String text, Collection<String> bundles) {
        return bundles.stream().filter(bundle -> !Pattern.compile(Pattern.quote(bundle) + "(?![.\\w])").matcher(text)
                .find()).map(bundle -> "docs/architecture.md does not name " + bundle + ".").toList();
    }
}
