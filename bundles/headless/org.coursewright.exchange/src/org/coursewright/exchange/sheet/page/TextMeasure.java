package org.coursewright.exchange.sheet.page;

/** Tells how much paper a text takes in the type that sheets are printed in. */
public interface TextMeasure {

    /**
     * @param text what is printed, not null
     * @param size of the type (mm)
     * @return width of the text (mm)
     */
    double width(String text, double size);

    /** @return the text with a question mark for every character the type lacks */
    String printable(String text);
}
