package org.coursewright.workbench.internal.preference;

/** How the workbench looks. */
public enum Appearance {
    /** Light or dark as the desktop is. */
    AS_DESKTOP,
    /** Dark on light. */
    LIGHT,
    /** Light on dark. */
    DARK
}
