package org.coursewright.core.fit;

import java.util.Objects;

import org.coursewright.bond.advice.Proposal;

/**
 * One change of the project, made after those proposed before it.
 *
 * @param change what changes, and its wall before and after
 * @param before what its wall takes before
 * @param after what its wall takes after
 * @param saving what it spares in its wall
 */
public record FitProposal(Proposal change, UnitsTaken before, UnitsTaken after, Saving saving) {

    public FitProposal {
        Objects.requireNonNull(change, "change");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        Objects.requireNonNull(saving, "saving");
    }
}
