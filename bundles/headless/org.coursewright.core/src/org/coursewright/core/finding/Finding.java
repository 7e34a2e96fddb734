package org.coursewright.core.finding;

import java.util.Objects;

/**
 * One thing that is wrong or doubtful.
 *
 * @param severity how much it matters
 * @param code stable name of the kind of finding, such as {@code opening.beyond-wall}
 * @param element the element concerned as people name it, such as {@code wall W3} or {@code opening D1 in wall W3}
 * @param message what is wrong and what to do, whole sentences
 */
public record Finding(Severity severity, String code, String element, String message) {

    public Finding {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(element, "element");
        Objects.requireNonNull(message, "message");
    }
}
