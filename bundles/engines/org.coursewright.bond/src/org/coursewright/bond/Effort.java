package org.coursewright.bond;

/** How much was done for an answer. */
public enum Effort {
    /** A first answer: meetings are handed as before or as usual; only what changed is laid, and with fewer tries. */
    QUICK,
    /** The answer: meetings are handed for the best layout of the whole building. */
    FULL
}
