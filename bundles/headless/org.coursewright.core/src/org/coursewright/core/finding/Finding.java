package org.coursewright.core.finding;

import java.util.Objects;

/**
 * One thing that is wrong or doubtful.
 *
 * @param severity how much it matters
 * @param code stable name of the kind of finding, such as {@code opening.beyond-wall}
 * @param element the element concerned
 * @param message what is wrong and what to do, whole sentences
 */
public record Finding(Severity severity, String code, ElementReference element, String message) {

    public Finding {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(element, "element");
        Objects.requireNonNull(message, "message");
    }
}
