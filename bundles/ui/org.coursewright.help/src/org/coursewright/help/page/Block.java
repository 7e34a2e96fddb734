package org.coursewright.help.page;

import java.util.List;

/** A part of a page that stands by itself. */
public sealed interface Block {

    /**
     * A heading.
     *
     * @param level 1 for the title of the page, larger for lesser ones
     * @param spans its words
     */
    record Heading(int level, List<Span> spans) implements Block {
        public Heading {
            spans = List.copyOf(spans);
        }
    }

    /**
     * Running text.
     *
     * @param spans its words
     */
    record Paragraph(List<Span> spans) implements Block {
        public Paragraph {
            spans = List.copyOf(spans);
        }
    }

    /**
     * An item of a list.
     *
     * @param mark what stands before it, such as a bullet or a number
     * @param spans its words
     */
    record Item(String mark, List<Span> spans) implements Block {
        public Item {
            spans = List.copyOf(spans);
        }
    }

    /**
     * A row of a table.
     *
     * @param cells from left to right
     */
    record Row(List<List<Span>> cells) implements Block {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * Lines as they are.
     *
     * @param text the lines
     */
    record Listing(String text) implements Block {
    }

    /**
     * A picture.
     *
     * @param file as the page names it
     * @param words what it shows, for whoever does not see it
     */
    record Picture(String file, String words) implements Block {
    }
}
