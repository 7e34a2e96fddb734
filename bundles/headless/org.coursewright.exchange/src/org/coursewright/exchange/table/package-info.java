/**
 * Tables that people type: their columns, and their cells read as what they should be. Whatever is wrong is told with file,
 * line and column, all of it in one go.
 */
package org.coursewright.exchange.table;
