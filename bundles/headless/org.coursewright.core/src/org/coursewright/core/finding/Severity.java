package org.coursewright.core.finding;

/** How much a finding matters, the gravest first. */
public enum Severity {
    /** The project contradicts itself: the element cannot be worked with until it is mended. */
    INVALID("invalid"),
    /** The building cannot be built as it stands. */
    ERROR("error"),
    /** It can be built, but somebody should look. */
    WARNING("warning"),
    /** Good to know. */
    NOTE("note");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /** @return the word used in text and JSON output */
    public String word() {
        return word;
    }
}
