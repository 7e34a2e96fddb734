package org.coursewright.bond.internal.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;

/** Patterns found on the way, by shape of run and in the order in which they were found. */
final class PatternsFound {

    private final Map<RunShape, List<Pattern>> patterns = new LinkedHashMap<>();

    void add(RunShape shape, Pattern pattern) {
        patterns.computeIfAbsent(shape, key -> new ArrayList<>()).add(pattern);
    }

    Map<RunShape, List<Pattern>> byShape() {
        return patterns;
    }
}
