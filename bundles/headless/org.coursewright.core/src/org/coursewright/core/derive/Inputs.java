package org.coursewright.core.derive;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The values that a computation starts from. */
public final class Inputs {

    private final Map<Source<?>, Object> values = new HashMap<>();

    /** Values in the order of the sources, none of them failed. */
    Inputs(List<Source<?>> sources, List<NodeState<?>> states) {
        for (int i = 0; i < sources.size(); i++) {
            values.put(sources.get(i), states.get(i).value().orElseThrow());
        }
    }

    /**
     * @param source one of the declared sources
     * @param <S> type of its value
     * @return its value
     * @throws IllegalArgumentException if it was not declared
     */
    public <S> S of(Source<S> source) {
        if (!values.containsKey(source)) {
            throw new IllegalArgumentException("\"%s\" is not declared as an input.".formatted(source.name()));
        }
        return source.type().cast(values.get(source));
    }
}
