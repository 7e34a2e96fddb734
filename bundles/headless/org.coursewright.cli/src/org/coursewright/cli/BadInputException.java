package org.coursewright.cli;

import java.util.List;

/** Says that a command cannot be done because of what was typed or what a file holds, in messages for standard error. */
public final class BadInputException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<String> messages;

    /** @param message what is wrong, where, and what to do */
    public BadInputException(String message) {
        this(List.of(message));
    }

    /** @param messages what is wrong, one line each, at least one */
    public BadInputException(List<String> messages) {
        super(String.join(System.lineSeparator(), messages));
        this.messages = List.copyOf(messages);
    }

    /** @return what is wrong, one line each */
    public List<String> messages() {
        return messages;
    }
}
