/**
 * Setting-out sheets: what the crew takes to the wall.
 *
 * <p>{@link org.coursewright.exchange.sheet.SheetWalls} reads walls and how they are laid into plain records;
 * {@link org.coursewright.exchange.sheet.layout} arranges them on pages; {@link org.coursewright.exchange.sheet.file} writes
 * pages as files.
 */
package org.coursewright.exchange.sheet;
