package org.coursewright.cli.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.coursewright.cli.BadInputException;
import org.coursewright.core.display.Amount;
import org.coursewright.core.takeoff.CourseMortar;
import org.coursewright.core.takeoff.LineTitle;
import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.core.takeoff.TakeoffOutcome;

/** How one line of a take-off, or the mortar of one course, came about. */
final class ShownLine {

    private final TakeoffOutcome outcome;
    private final String wanted;

    private final Amount amounts;

    ShownLine(TakeoffOutcome outcome, String wanted, Amount amounts) {
        this.outcome = outcome;
        this.amounts = amounts;
        this.wanted = wanted.strip();
    }

    String text() throws BadInputException {
        List<TakeoffLine> lines = wanted.contains("/") ? ofCourse() : List.of(numbered());
        return lines.isEmpty()
                ? wanted + " has no mortar."
                : lines.stream().map(this::shown).collect(Collectors.joining("\n\n"));
    }

    private TakeoffLine numbered() throws BadInputException {
        for (int i = 0; i < outcome.lines().size(); i++) {
            if (String.valueOf(i + 1).equals(wanted)) {
                return outcome.lines().get(i);
            }
        }
        throw unknown();
    }

    private List<TakeoffLine> ofCourse() throws BadInputException {
        int slash = wanted.lastIndexOf('/');
        String mark = wanted.substring(0, slash);
        String course = wanted.substring(slash + 1);
        return outcome.walls().stream().filter(wall -> wall.mark().equalsIgnoreCase(mark))
                .flatMap(wall -> wall.courses().stream())
                .filter(candidate -> String.valueOf(candidate.course()).equals(course)).map(CourseMortar::lines)
                .findFirst().orElseThrow(this::unknown);
    }

    private BadInputException unknown() {
        return new BadInputException("--show-me: There is no line \"%s\". Lines are 1 to %d; a course is such as %s/1."
                .formatted(wanted, outcome.lines().size(),
                        outcome.walls().isEmpty() ? "W1" : outcome.walls().get(0).mark()));
    }

    private String shown(TakeoffLine line) {
        List<String> text = new ArrayList<>();
        text.add("%s, %s: %s%s".formatted(amounts.inProject(line.item()), LineTitle.of(line.formula()),
                amounts.exact(line.quantity()),
                line.inFeet().map(feet -> " = " + amounts.exact(feet)).orElse("")));
        text.add("formula  %s = %s".formatted(line.formula(), line.expression()));
        text.add("source   " + line.source());
        line.inputs().forEach(
                input -> text.add("input    %s = %s".formatted(amounts.inProject(input.symbol()), amounts.exact(input
                        .value()))));
        text.add("from     " + String.join(", ", line.elements()));
        return String.join("\n", text);
    }
}
