package org.coursewright.exchange.sheet.page;

import java.util.List;
import java.util.Objects;

/**
 * One page.
 *
 * @param title what it is called
 * @param width of the paper (mm)
 * @param height of the paper (mm)
 * @param marks what is drawn, in order
 */
public record SheetPage(String title, double width, double height, List<Mark> marks) {

    public SheetPage {
        Objects.requireNonNull(title, "title");
        marks = List.copyOf(marks);
    }

    /** @return all its texts */
    public List<Label> labels() {
        return marks.stream().filter(Label.class::isInstance).map(Label.class::cast).toList();
    }
}
