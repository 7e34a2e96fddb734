package org.coursewright.core.fit;

import java.util.Objects;

import org.coursewright.bond.advice.Proposal;

/**
 * One change of the project, made after those proposed before it.
 *
 * @param change what changes, and the walls that it changes before and after
 * @param before what these walls take before
 * @param after what they take after
 * @param saving what it spares in them
 */
public record FitProposal(Proposal change, UnitsTaken before, UnitsTaken after, Saving saving) {

    public FitProposal {
        Objects.requireNonNull(change, "change");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        Objects.requireNonNull(saving, "saving");
    }
}
