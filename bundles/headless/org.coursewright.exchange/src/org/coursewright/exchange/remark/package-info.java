/** What a reader has to say about a file: what it refuses, what it doubts, and where exactly. */
package org.coursewright.exchange.remark;
