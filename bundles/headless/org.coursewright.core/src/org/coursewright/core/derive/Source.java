package org.coursewright.core.derive;

/**
 * Something that a derived result is computed from.
 *
 * @param <T> type of its value: immutable, with an {@code equals} that compares content; a record does
 */
public sealed interface Source<T> permits ModelRead, Derived {

    /** @return what it is called in messages */
    String name();

    /** @return type of its value */
    Class<T> type();
}
