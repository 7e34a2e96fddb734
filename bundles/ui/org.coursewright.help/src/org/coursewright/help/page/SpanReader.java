package org.coursewright.help.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads words with links, strong words and code among them. */
final class SpanReader {

    private static final Pattern MARKED = Pattern
            .compile("\\[([^\\]]+)\\]\\(([^)\\s]+)\\)|\\*\\*([^*]+)\\*\\*|`([^`]+)`");

    private SpanReader() {
    }

    static List<Span> read(String text) {
        List<Span> spans = new ArrayList<>();
        Matcher matcher = MARKED.matcher(text);
        int done = 0;
        while (matcher.find()) {
            addPlain(text.substring(done, matcher.start()), spans);
            spans.add(marked(matcher));
            done = matcher.end();
        }
        addPlain(text.substring(done), spans);
        return spans;
    }

    private static void addPlain(String text, List<Span> spans) {
        if (!text.isEmpty()) {
            spans.add(Span.plain(text));
        }
    }

    private static Span marked(Matcher matcher) {
        if (matcher.group(2) != null) {
            return Span.link(matcher.group(1).replace("`", ""), matcher.group(2));
        }
        return matcher.group(3) != null ? Span.strong(matcher.group(3)) : Span.code(matcher.group(4));
    }
}
