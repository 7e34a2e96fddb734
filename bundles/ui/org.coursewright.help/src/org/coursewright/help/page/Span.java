package org.coursewright.help.page;

import java.util.Objects;
import java.util.Optional;

/**
 * Words of one style.
 *
 * @param text the words
 * @param style how they look
 * @param target where a link leads, as the page has it; empty if it is none
 */
public record Span(String text, Style style, Optional<String> target) {

    /** How words look. */
    public enum Style {
        /** Like most of the text. */
        PLAIN,
        /** Standing out. */
        STRONG,
        /** As in a computer's text. */
        CODE
    }

    public Span {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(style, "style");
        Objects.requireNonNull(target, "target");
    }

    static Span plain(String text) {
        return new Span(text, Style.PLAIN, Optional.empty());
    }

    static Span strong(String text) {
        return new Span(text, Style.STRONG, Optional.empty());
    }

    static Span code(String text) {
        return new Span(text, Style.CODE, Optional.empty());
    }

    static Span link(String text, String target) {
        return new Span(text, Style.PLAIN, Optional.of(target));
    }
}
