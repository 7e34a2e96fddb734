package org.coursewright.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Spoils files the way people, editors and attackers do. The same seed spoils a file the same way. */
final class Mutation {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final Pattern ATTRIBUTE = Pattern.compile(" [\\w:]+=\"[^\"]*\"");
    private static final List<String> NUMBERS = List.of("0", "-1", "1", "0.0031250001", "1e9", "-0", "00012", "7",
            "12.7",
            "99999999999999999999999", "9223372036854775807", "-9223372036854775808", "1/0", "1/3", "NaN", "2147483648",
            "4.5", "3000", "25.4", "1000000", "'", "\"", "½", "٣", "");
    private static final List<String> SCRAPS = List.of("\u0000", "\u0007", "\uFEFF", "\uFFFE", "\u202E", "\u2028", "é",
            "𝟜",
            "e\u0301", ",", ";", "\t", "\"", "'", "\r", "\n", "<", ">", "&", "<a>", "</a>", "&lol;", "<![CDATA[", "]]>",
            "<!--", "<?x?>", "<!DOCTYPE x [<!ENTITY lol \"lol\">]>", "=1+1", "href=\"file:///etc/passwd#/\"",
            "xsi:type=\"ecore:EClass\"", "x".repeat(300), "../../x", "%s%n", "${x}");

    private final Random random;

    Mutation(long seed) {
        random = new Random(seed);
    }

    /** @return the text spoilt in one to three ways */
    byte[] of(String text) {
        String spoilt = text;
        for (int i = random.nextInt(3); i >= 0; i--) {
            spoilt = spoil(spoilt);
        }
        return random.nextInt(4) == 0
                ? flipped(spoilt.getBytes(StandardCharsets.UTF_8))
                : spoilt.getBytes(StandardCharsets.UTF_8);
    }

    private String spoil(String text) {
        return switch (random.nextInt(10)) {
            case 0 -> text.substring(0, random.nextInt(text.length() + 1));
            case 1 -> lines(text, lines -> lines.add(random.nextInt(lines.size() + 1), pick(lines)));
            case 2 -> lines(text, lines -> lines.remove(random.nextInt(lines.size())));
            case 3 -> lines(text,
                    lines -> Collections.swap(lines, random.nextInt(lines.size()), random.nextInt(lines.size())));
            case 4 ->
                lines(text, lines -> lines.replaceAll(line -> random.nextInt(3) == 0 ? swappedCells(line) : line));
            case 5 -> withoutColumn(text);
            case 6, 7 -> replaced(text, NUMBER, NUMBERS);
            case 8 -> inserted(text);
            default ->
                replaced(text, ATTRIBUTE, List.of("", " x=\"1\"", " mark=\"W1\"", " unitType=\"_x\"", " href=\"#_x\""));
        };
    }

    private String lines(String text, java.util.function.Consumer<List<String>> change) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (!lines.isEmpty()) {
            change.accept(lines);
        }
        return String.join("\n", lines) + "\n";
    }

    private String swappedCells(String line) {
        List<String> cells = Arrays.asList(line.split(",", -1));
        Collections.swap(cells, random.nextInt(cells.size()), random.nextInt(cells.size()));
        return String.join(",", cells);
    }

    private String withoutColumn(String text) {
        int column = random.nextInt(10);
        return text.lines().map(line -> {
            List<String> cells = new ArrayList<>(List.of(line.split(",", -1)));
            if (column < cells.size()) {
                cells.remove(column);
            }
            return String.join(",", cells);
        }).collect(Collectors.joining("\n"));
    }

    private String replaced(String text, Pattern what, List<String> by) {
        List<MatchResult> found = what.matcher(text).results().toList();
        if (found.isEmpty()) {
            return inserted(text);
        }
        MatchResult one = found.get(random.nextInt(found.size()));
        return text.substring(0, one.start()) + pick(by) + text.substring(one.end());
    }

    private String inserted(String text) {
        int at = random.nextInt(text.length() + 1);
        return text.substring(0, at) + pick(SCRAPS) + text.substring(at);
    }

    private byte[] flipped(byte[] bytes) {
        for (int i = random.nextInt(4); i >= 0 && bytes.length > 0; i--) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return bytes;
    }

    private String pick(List<String> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
