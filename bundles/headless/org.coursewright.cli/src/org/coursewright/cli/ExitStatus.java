package org.coursewright.cli;

/** How a command ended, as the calling shell sees it. */
public enum ExitStatus {
    /** The job is done. */
    DONE,
    /** The job is done as far as it goes: what was found must be mended before it can be built so. */
    FINDINGS,
    /** Nothing was done because of what was typed or what a file holds. */
    BAD_INPUT,
    /** Nothing was done because of a fault in the program. */
    INTERNAL_ERROR,
    /** Nothing was done because whoever ran the command no longer wanted it; only another program can say so. */
    CANCELLED;

    /** @return the number handed to the shell, 0 to 4 */
    public int code() {
        return ordinal();
    }
}
