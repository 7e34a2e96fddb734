package org.coursewright.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.coursewright.measure.LengthToken.Kind;

/** Cuts a typed length into pieces. */
final class LengthScanner {

    private static final int LONGEST = 40;

    private static final Pattern TOKEN = Pattern
            .compile("( *)(?:(\\d+ ?/ ?\\d+)|(\\d+\\.?\\d*|\\.\\d+)|(''|['\"]|\\p{L}+\\.?)|(-)|(\\+))");

    /** What the groups of the pattern are, from the second on. */
    private static final List<Kind> KINDS = List.of(Kind.FRACTION, Kind.NUMBER, Kind.UNIT, Kind.DASH, Kind.PLUS);

    private final String typed;

    LengthScanner(String typed) {
        this.typed = typed;
    }

    /**
     * @return the pieces in their order, at least one
     * @throws LengthFormatException if there are none or a character belongs to no length
     */
    List<LengthToken> tokens() {
        String plain = plain();
        List<LengthToken> tokens = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(plain);
        int at = 0;
        while (at < plain.length()) {
            if (!matcher.find(at) || matcher.start() != at) {
                throw unexpected(plain.substring(at).strip());
            }
            tokens.add(token(matcher));
            at = matcher.end();
        }
        return tokens;
    }

    private String plain() {
        String stripped = typed.strip();
        if (stripped.length() > LONGEST) {
            throw new LengthFormatException(typed, "it has %d characters, and no length needs more than %d"
                    .formatted(stripped.length(), LONGEST));
        }
        String plain = PlainCharacters.of(stripped).strip();
        if (plain.isEmpty()) {
            throw new LengthFormatException(typed, "it is empty; write a number, such as 4 1/2 in or 3760 mm");
        }
        return plain;
    }

    private static LengthToken token(Matcher matcher) {
        int group = 2;
        while (matcher.group(group) == null) {
            group++;
        }
        return new LengthToken(KINDS.get(group - 2), matcher.group(group), matcher.group(1).isEmpty());
    }

    private LengthFormatException unexpected(String rest) {
        if (rest.startsWith(",")) {
            return new LengthFormatException(typed, "a comma means thousands in one country and decimals in the next;"
                    + " write 3760 without one, or 3.76 with a point");
        }
        String character = rest.substring(0, rest.offsetByCodePoints(0, 1));
        return new LengthFormatException(typed,
                "\"%s\" cannot stand there; write such as 12'-4 1/2\", 4 1/2 in, 3760 mm or 3.76 m"
                        .formatted(character.replaceAll("\\p{Cntrl}", "\u2423")));
    }
}
