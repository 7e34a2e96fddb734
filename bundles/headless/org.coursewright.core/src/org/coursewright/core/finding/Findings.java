package org.coursewright.core.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers findings while a project is read, and hands them out the gravest first. Confined to one thread. */
public final class Findings {

    private final List<Finding> found = new ArrayList<>();

    /** Adds a finding that the element contradicts itself or others. */
    public void invalid(String code, ElementReference element, String message) {
        found.add(new Finding(Severity.INVALID, code, element, message));
    }

    /** Adds a finding that the element cannot be built as it stands. */
    public void error(String code, ElementReference element, String message) {
        found.add(new Finding(Severity.ERROR, code, element, message));
    }

    /** Adds a finding that somebody should look at. */
    public void warning(String code, ElementReference element, String message) {
        found.add(new Finding(Severity.WARNING, code, element, message));
    }

    /** Adds a finding that is good to know. */
    public void note(String code, ElementReference element, String message) {
        found.add(new Finding(Severity.NOTE, code, element, message));
    }

    /** Adds findings made elsewhere. */
    public void addAll(List<Finding> others) {
        found.addAll(others);
    }

    /** @return how many of a severity were added so far */
    public long count(Severity severity) {
        return found.stream().filter(finding -> finding.severity() == severity).count();
    }

    /** @return what was added, the gravest first, otherwise in the order it was added */
    public List<Finding> gravestFirst() {
        return found.stream().sorted(Comparator.comparing(Finding::severity)).toList();
    }
}
