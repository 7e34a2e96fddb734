package org.coursewright.exchange.sheet.file;

/**
 * A file to be written.
 *
 * @param name in its folder
 * @param content all its bytes
 */
record SheetFile(String name, byte[] content) {
}
