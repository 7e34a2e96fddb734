package org.coursewright.architecture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One clause of a manifest header, such as {@code org.example;bundle-version="[1.0.0,2.0.0)"} (OSGi Core, section
 * 3.2.5).
 */
record Clause(String name, String parameters) {

    private static final Pattern ONE = Pattern.compile("(?:[^,\"]|\"[^\"]*\")+");

    static List<Clause> parse(String header) {
        List<Clause> clauses = new ArrayList<>();
        Matcher matcher = ONE.matcher(header);
        while (matcher.find()) {
            String[] parts = matcher.group().strip().split("\\s*;\\s*", 2);
            clauses.add(new Clause(parts[0], parts.length == 2 ? parts[1] : ""));
        }
        return List.copyOf(clauses);
    }

    /** The value of an attribute or directive without its quotes. */
    Optional<String> parameter(String key) {
        Matcher matcher = Pattern.compile("(?:^|;)\\s*" + Pattern.quote(key) + "\\s*:?=\\s*(\"[^\"]*\"|[^;\"]*)")
                .matcher(
                        parameters);
        return matcher.find() ? Optional.of(matcher.group(1).replace("\"", "").strip()) : Optional.empty();
    }
}
