package org.coursewright.help.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.help.page.Block;
import org.coursewright.help.page.Span;
import org.eclipse.jface.resource.JFaceColors;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Display;

/** A page as a text widget takes it: one text, styles for parts of it, links, and places for pictures. */
final class PageText {

    /** Stands in the text where a picture is. */
    static final String PICTURE = "\uFFFC";

    private static final int LARGEST_HEADING = 2;
    private static final String GAP_IN_ROW = "  \u00B7  ";

    private final StringBuilder text = new StringBuilder();
    private final List<StyleRange> styles = new ArrayList<>();
    private final Map<StyleRange, String> links = new LinkedHashMap<>();
    private final Map<Integer, Block.Picture> pictures = new LinkedHashMap<>();
    private final List<Integer> items = new ArrayList<>();

    PageText(List<Block> blocks) {
        Block before = null;
        for (Block block : blocks) {
            text.append(before == null || isTight(before, block) ? "" : "\n");
            add(block);
            text.append('\n');
            before = block;
        }
    }

    private static boolean isTight(Block before, Block block) {
        return before.getClass() == block.getClass() && (block instanceof Block.Item || block instanceof Block.Row);
    }

    String text() {
        return text.toString();
    }

    StyleRange[] styles() {
        return styles.toArray(StyleRange[]::new);
    }

    /** @return the target of the link at a place in the text */
    Optional<String> linkAt(int offset) {
        return links.entrySet().stream().filter(link -> link.getKey().start <= offset)
                .filter(link -> offset < link.getKey().start + link.getKey().length).map(Map.Entry::getValue)
                .findFirst();
    }

    /** @return the pictures by their places in the text */
    Map<Integer, Block.Picture> pictures() {
        return pictures;
    }

    /** @return where items of lists begin */
    List<Integer> items() {
        return items;
    }

    private void add(Block block) {
        if (block instanceof Block.Heading heading) {
            addHeading(heading);
        } else if (block instanceof Block.Paragraph paragraph) {
            paragraph.spans().forEach(this::add);
        } else if (block instanceof Block.Item item) {
            items.add(text.length());
            text.append("  ").append(item.mark()).append("  ");
            item.spans().forEach(this::add);
        } else if (block instanceof Block.Row row) {
            addRow(row);
        } else if (block instanceof Block.Listing listing) {
            style(listing.text(), font(JFaceResources.TEXT_FONT));
        } else if (block instanceof Block.Picture picture) {
            pictures.put(text.length(), picture);
            text.append(PICTURE);
        }
    }

    private void addHeading(Block.Heading heading) {
        Font font = heading.level() < LARGEST_HEADING
                ? font(JFaceResources.HEADER_FONT)
                : JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT);
        heading.spans().forEach(span -> style(span.text(), font));
    }

    /** The first cell says what the others are about. */
    private void addRow(Block.Row row) {
        for (int i = 0; i < row.cells().size(); i++) {
            text.append(i == 0 ? "" : GAP_IN_ROW);
            if (i == 0) {
                Font bold = JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT);
                row.cells().get(i).forEach(span -> style(span.text(), bold));
            } else {
                row.cells().get(i).forEach(this::add);
            }
        }
    }

    private void add(Span span) {
        if (span.target().isPresent()) {
            addLink(span.text(), span.target().get());
            return;
        }
        switch (span.style()) {
            case PLAIN -> text.append(span.text());
            case STRONG -> style(span.text(), JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
            case CODE -> style(span.text(), font(JFaceResources.TEXT_FONT));
        }
    }

    private void addLink(String words, String target) {
        StyleRange style = new StyleRange();
        style.start = text.length();
        style.length = words.length();
        style.underline = true;
        style.underlineStyle = SWT.UNDERLINE_LINK;
        style.foreground = JFaceColors.getHyperlinkText(Display.getCurrent());
        styles.add(style);
        links.put(style, target);
        text.append(words);
    }

    private void style(String words, Font font) {
        StyleRange style = new StyleRange();
        style.start = text.length();
        style.length = words.length();
        style.font = font;
        styles.add(style);
        text.append(words);
    }

    private static Font font(String name) {
        return JFaceResources.getFontRegistry().get(name);
    }
}
