package org.coursewright.benchmarks.oracle;

/** What became of the claim that no layout of a wall is better than a given one. */
public enum Verdict {
    /** No better layout exists. */
    CONFIRMED,
    /** A better layout was found. */
    REFUTED,
    /** Time ran out. */
    UNDECIDED
}
