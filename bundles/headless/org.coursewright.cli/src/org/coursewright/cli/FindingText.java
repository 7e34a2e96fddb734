package org.coursewright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;

/** How findings are written. */
public final class FindingText {

    private FindingText() {
    }

    /** @return one line: how grave, which element, what is wrong and what to do, and the finding's code */
    public static String line(Finding finding) {
        return "%s: %s: %s [%s]".formatted(finding.severity().word(), finding.element().name(), finding.message(),
                finding.code());
    }

    /** @return how many findings there are of each severity, such as {@code 1 error, 2 warnings} */
    public static String summary(List<Finding> findings) {
        String counts = Arrays.stream(Severity.values()).map(severity -> counted(findings, severity))
                .filter(text -> !text.isEmpty()).collect(Collectors.joining(", "));
        return counts.isEmpty() ? "no findings" : "findings: " + counts;
    }

    private static String counted(List<Finding> findings, Severity severity) {
        long count = count(findings, severity);
        boolean takesPlural = count > 1 && severity != Severity.INVALID;
        return count == 0 ? "" : "%d %s%s".formatted(count, severity.word(), takesPlural ? "s" : "");
    }

    /** Writes the findings as the member {@code findings}. */
    public static void write(List<Finding> findings, JsonText json) {
        json.array("findings", findings, finding -> json.object(() -> {
            json.member("severity", finding.severity().word());
            json.member("code", finding.code());
            json.member("element", finding.element().name());
            json.member("message", finding.message());
        }));
    }

    /** @return how many findings are of the severity */
    public static long count(List<Finding> findings, Severity severity) {
        return findings.stream().filter(finding -> finding.severity() == severity).count();
    }
}
