package org.coursewright.help.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the part of Markdown that our guide is written in: headings with {@code #}, paragraphs, lists, tables, fenced
 * listings and pictures on lines of their own. What it does not know it shows as it stands.
 */
public final class PageReader {

    private static final Pattern HEADING = Pattern.compile("(#{1,6})\\s+(.*)");
    private static final Pattern ITEM = Pattern.compile("\\s*([-*]|\\d+\\.)\\s+(.*)");
    private static final Pattern PICTURE = Pattern.compile("!\\[([^\\]]*)\\]\\(([^)\\s]+)\\)");
    private static final Pattern RULE_OF_TABLE = Pattern.compile("\\|[-:| ]+\\|");
    private static final String FENCE = "```";
    private static final String BULLET = "\u2022";

    private final List<Block> blocks = new ArrayList<>();
    private final StringBuilder running = new StringBuilder();
    private String mark = "";

    private PageReader() {
    }

    /**
     * @param markdown text of a page
     * @return its parts in their order
     */
    public static List<Block> read(String markdown) {
        PageReader reader = new PageReader();
        Iterator<String> lines = markdown.lines().iterator();
        while (lines.hasNext()) {
            reader.read(lines.next(), lines);
        }
        reader.endText();
        return List.copyOf(reader.blocks);
    }

    private void read(String line, Iterator<String> further) {
        Matcher heading = HEADING.matcher(line);
        Matcher item = ITEM.matcher(line);
        Matcher picture = PICTURE.matcher(line.strip());
        if (line.startsWith(FENCE)) {
            add(new Block.Listing(listing(further)));
        } else if (heading.matches()) {
            add(new Block.Heading(heading.group(1).length(), SpanReader.read(heading.group(2))));
        } else if (picture.matches()) {
            add(new Block.Picture(picture.group(2), picture.group(1)));
        } else if (line.startsWith("|")) {
            readRow(line);
        } else if (item.matches()) {
            beginItem(item.group(1), item.group(2));
        } else if (line.isBlank()) {
            endText();
        } else {
            go(line);
        }
    }

    private void add(Block block) {
        endText();
        blocks.add(block);
    }

    private static String listing(Iterator<String> lines) {
        List<String> listed = new ArrayList<>();
        while (lines.hasNext()) {
            String line = lines.next();
            if (line.startsWith(FENCE)) {
                break;
            }
            listed.add(line);
        }
        return String.join("\n", listed);
    }

    private void readRow(String line) {
        if (!RULE_OF_TABLE.matcher(line.strip()).matches()) {
            String inner = line.strip().replaceAll("^\\||\\|$", "");
            add(new Block.Row(Arrays.stream(inner.split("(?<!\\\\)\\|")).map(String::strip).map(SpanReader::read)
                    .toList()));
        }
    }

    private void beginItem(String sign, String text) {
        endText();
        mark = Character.isDigit(sign.charAt(0)) ? sign : BULLET;
        go(text);
    }

    private void go(String line) {
        running.append(running.isEmpty() ? "" : " ").append(line.strip());
    }

    private void endText() {
        if (!running.isEmpty()) {
            List<Span> spans = SpanReader.read(running.toString());
            blocks.add(mark.isEmpty() ? new Block.Paragraph(spans) : new Block.Item(mark, spans));
        }
        running.setLength(0);
        mark = "";
    }
}
