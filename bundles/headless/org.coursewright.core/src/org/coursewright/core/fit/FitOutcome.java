package org.coursewright.core.fit;

import java.util.List;
import java.util.Objects;

import org.coursewright.bond.advice.Advice;
import org.coursewright.core.finding.Finding;

/**
 * Which changes of a project spare cuts.
 *
 * @param advice what the engine found; its proposals are those of {@code proposals}
 * @param proposals in the order to make them
 * @param saving what all of them spare in the whole building
 * @param findings what was found in the project on the way, the gravest first
 */
public record FitOutcome(Advice advice, List<FitProposal> proposals, Saving saving, List<Finding> findings) {

    public FitOutcome {
        Objects.requireNonNull(advice, "advice");
        proposals = List.copyOf(proposals);
        Objects.requireNonNull(saving, "saving");
        findings = List.copyOf(findings);
    }
}
