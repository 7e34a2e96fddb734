/** Writes sheets as files: all of them or none. */
package org.coursewright.exchange.sheet.file;
