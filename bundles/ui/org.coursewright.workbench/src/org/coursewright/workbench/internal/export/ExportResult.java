package org.coursewright.workbench.internal.export;

/**
 * How writing went.
 *
 * @param written whether it did
 * @param message where to, or why not
 */
record ExportResult(boolean written, String message) {
}
