package org.coursewright.core.cost;

import java.util.Objects;

/**
 * What a scenario is called.
 *
 * @param mark its mark
 * @param description what is different in it, may be empty
 */
record ScenarioName(String mark, String description) {

    /** The building as the project has it. */
    static final ScenarioName AS_PLANNED = new ScenarioName("as planned", "");

    ScenarioName {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(description, "description");
    }
}
