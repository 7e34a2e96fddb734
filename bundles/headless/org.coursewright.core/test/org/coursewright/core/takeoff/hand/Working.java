package org.coursewright.core.takeoff.hand;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reckons a working of the sheet, such as {@code round up((stretcher.whole + 18) x 1.04)}, exactly: sums, differences,
 * products, brackets, names of counts, results of other lines.
 */
final class Working {

    private static final Pattern TOKEN = Pattern.compile(
            "\\s*(round up|line \\d+|[a-z][a-z_.]*[a-z]|\\d+(?:\\.\\d+)?|[-+x()])");

    private final Matcher tokens;
    private final Map<String, BigDecimal> counts;
    private final List<BigDecimal> lines;
    private String next;

    private Working(String text, Map<String, BigDecimal> counts, List<BigDecimal> lines) {
        this.tokens = TOKEN.matcher(text);
        this.counts = counts;
        this.lines = lines;
        advance();
    }

    /**
     * @param text of the working
     * @param counts by their names
     * @param lines results of the lines before, the first being line 1
     */
    static BigDecimal result(String text, Map<String, BigDecimal> counts, List<BigDecimal> lines) {
        Working working = new Working(text, counts, lines);
        BigDecimal result = working.sum();
        if (!working.next.isEmpty() || !working.tokens.hitEnd()) {
            throw new IllegalArgumentException("This working cannot be read to its end: " + text);
        }
        return result;
    }

    private void advance() {
        next = tokens.lookingAt() ? tokens.group(1) : "";
        if (!next.isEmpty()) {
            tokens.region(tokens.end(), tokens.regionEnd());
        }
    }

    private BigDecimal sum() {
        BigDecimal sum = product();
        while (next.equals("+") || next.equals("-")) {
            boolean plus = next.equals("+");
            advance();
            sum = plus ? sum.add(product()) : sum.subtract(product());
        }
        return sum;
    }

    private BigDecimal product() {
        BigDecimal product = factor();
        while (next.equals("x")) {
            advance();
            product = product.multiply(factor());
        }
        return product;
    }

    private BigDecimal factor() {
        String token = next;
        advance();
        if (token.equals("round up")) {
            return factor().setScale(0, RoundingMode.UP);
        }
        if (token.equals("(")) {
            BigDecimal inside = sum();
            advance();
            return inside;
        }
        if (token.startsWith("line ")) {
            return lines.get(Integer.parseInt(token.substring(5)) - 1);
        }
        return counts.containsKey(token) ? counts.get(token) : new BigDecimal(token);
    }
}
