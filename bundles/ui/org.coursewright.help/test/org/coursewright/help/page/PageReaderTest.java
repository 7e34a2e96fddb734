package org.coursewright.help.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.junit.jupiter.api.Test;

class PageReaderTest {

    @Test
    void headingsParagraphsAndListsAreTold() {
        assertThat(PageReader.read("""
                # A *wall*
                It has
                two lines.

                - first
                  goes on
                2. second
                """)).containsExactly(new Block.Heading(1, List.of(Span.plain("A *wall*"))),
                new Block.Paragraph(List.of(Span.plain("It has two lines."))),
                new Block.Item("\u2022", List.of(Span.plain("first goes on"))),
                new Block.Item("2.", List.of(Span.plain("second"))));
    }

    @Test
    void linksStrongWordsAndCodeAreFoundInRunningText() {
        assertThat(PageReader.read("See **here**, `lay` and [the `sheets`](sheets.md#scale)."))
                .containsExactly(new Block.Paragraph(List.of(Span.plain("See "), Span.strong("here"), Span.plain(", "),
                        Span.code("lay"), Span.plain(" and "), Span.link("the sheets", "sheets.md#scale"),
                        Span.plain("."))));
    }

    @Test
    void tablesAreReadRowByRowWithoutTheRule() {
        assertThat(PageReader.read("""
                | key | does |
                | --- | :-: |
                | F1 | help |
                """)).containsExactly(
                new Block.Row(List.of(List.of(Span.plain("key")), List.of(Span.plain("does")))),
                new Block.Row(List.of(List.of(Span.plain("F1")), List.of(Span.plain("help")))));
    }

    @Test
    void listingsAndPicturesStandAsTheyAre() {
        assertThat(PageReader.read("""
                ```
                # no heading
                  indented
                ```
                ![The window](../images/window.png)
                """)).containsExactly(new Block.Listing("# no heading\n  indented"),
                new Block.Picture("../images/window.png", "The window"));
    }

    @Test
    void listingThatDoesNotEndTakesTheRest() {
        assertThat(PageReader.read("```\nlast")).containsExactly(new Block.Listing("last"));
        assertThat(PageReader.read("")).isEmpty();
    }
}
