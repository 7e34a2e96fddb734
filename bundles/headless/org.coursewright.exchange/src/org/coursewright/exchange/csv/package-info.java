/**
 * Tables of comma-separated values (RFC 4180), read so that no file, however broken or hostile, does harm: what is no
 * plain table of reasonable size is refused with a message that names file, line and remedy.
 */
package org.coursewright.exchange.csv;
