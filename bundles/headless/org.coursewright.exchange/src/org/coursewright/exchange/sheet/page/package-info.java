/**
 * What is drawn on a sheet, free of any file format: pages of strokes, shapes and labels in millimetres of paper, counted
 * from the bottom left corner.
 */
package org.coursewright.exchange.sheet.page;
