package org.coursewright.bond.internal.proof;

import java.util.List;
import java.util.Map;

import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;

/**
 * A bound on the cuts of a wall, and what was found on the way to it. It rests on the wall alone, not on how far it has
 * been laid.
 *
 * @param cuts every layout that has no avoidable lap violation has so many or more; proven
 * @param chosen by run what the bound is made of; often all of it can be had at once
 * @param patterns by shape of run, patterns that go together with few cuts
 */
public record CutProof(int cuts, List<RunChoice> chosen, Map<RunShape, List<Pattern>> patterns) {
}
