package org.coursewright.core.derive;

/** Says why there is no result for the project as it is. */
public final class DerivationException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    DerivationException(String node, String reason) {
        super("There is no %s: %s".formatted(node, reason));
    }
}
