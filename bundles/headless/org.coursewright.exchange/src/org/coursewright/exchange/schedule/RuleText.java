package org.coursewright.exchange.schedule;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.coursewright.core.bond.JointRange;
import org.coursewright.exchange.remark.Shown;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.LengthFormatException;

/** Reads a bond rule as typed, keeping track of positions for messages. */
final class RuleText {

    private enum Key {
        LAP, HEAD, BED, SHORTEST;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A stretch of the text and the index it begins at, without surrounding blanks. */
    private record Span(String text, int start) {

        static Span of(String text, int start) {
            return new Span(text.strip(), start + text.indexOf(text.strip()));
        }

        int position() {
            return start + 1;
        }
    }

    private final String text;
    private final LengthFormat format;
    private final Map<Key, Span> values = new HashMap<>();

    RuleText(String text, LengthFormat format) {
        this.text = text;
        this.format = format;
    }

    RuleChoice read() throws RuleTextException {
        int start = 0;
        for (String item : text.split(",", -1)) {
            readItem(Span.of(item, start));
            start += item.length() + 1;
        }
        RuleChoice usual = RuleChoice.usual(format.unit());
        Optional<Length> lap = optional(Key.LAP, LengthRange.LAP);
        Optional<Length> shortest = optional(Key.SHORTEST, LengthRange.PIECE);
        return new RuleChoice(lap, joint(Key.HEAD, usual.head()), joint(Key.BED, usual.bed()), shortest);
    }

    private Optional<Length> optional(Key key, LengthRange range) throws RuleTextException {
        Span value = values.get(key);
        return value == null ? Optional.empty() : Optional.of(length(value, range));
    }

    private void readItem(Span item) throws RuleTextException {
        int equals = item.text().indexOf('=');
        if (equals < 0) {
            throw new RuleTextException(item.position(),
                    "%s lacks its equals sign. Write items such as lap=3 1/2 in, separated by commas."
                            .formatted(Shown.quoted(item.text())));
        }
        Key key = key(Span.of(item.text().substring(0, equals), item.start()));
        Span value = Span.of(item.text().substring(equals + 1), item.start() + equals + 1);
        if (values.putIfAbsent(key, value) != null) {
            throw new RuleTextException(item.position(), "%s is given twice. Keep one.".formatted(key.word()));
        }
    }

    private static Key key(Span name) throws RuleTextException {
        return Arrays.stream(Key.values()).filter(key -> key.word().equalsIgnoreCase(name.text())).findFirst()
                .orElseThrow(() -> new RuleTextException(name.position(),
                        "%s is unknown. Known are %s.".formatted(Shown.quoted(name.text()),
                                Arrays.stream(Key.values()).map(Key::word).collect(Collectors.joining(", ")))));
    }

    private JointRange joint(Key key, JointRange usual) throws RuleTextException {
        Span value = values.get(key);
        if (value == null) {
            return usual;
        }
        String[] parts = value.text().split(":", -1);
        if (parts.length != 3) {
            throw new RuleTextException(value.position(),
                    "%s needs three lengths, least:nominal:most, such as 3/8 in:1/2 in:3/4 in.".formatted(key.word()));
        }
        Length[] lengths = new Length[3];
        int start = value.start();
        for (int i = 0; i < 3; i++) {
            lengths[i] = length(Span.of(parts[i], start), LengthRange.JOINT);
            start += parts[i].length() + 1;
        }
        if (lengths[0].isGreaterThan(lengths[1]) || lengths[1].isGreaterThan(lengths[2])) {
            throw new RuleTextException(value.position(),
                    "The lengths of %s must not fall. Order them least:nominal:most.".formatted(key.word()));
        }
        return new JointRange(lengths[0], lengths[1], lengths[2]);
    }

    private Length length(Span value, LengthRange range) throws RuleTextException {
        try {
            Length length = format.parse(value.text());
            if (range.contains(length)) {
                return length;
            }
            throw new RuleTextException(value.position(),
                    "%s is out of range: enter %s.".formatted(Shown.quoted(value.text()), range));
        } catch (LengthFormatException e) {
            throw new RuleTextException(value.position(), e.getMessage());
        }
    }
}
