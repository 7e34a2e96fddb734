/**
 * Exact lengths, money and quantities, how people write them, and how a long computation reports and is cancelled.
 *
 * <p>Start with {@link org.coursewright.measure.Length} and {@link org.coursewright.measure.LengthFormat}.
 * Everything here is immutable and safe for use from any thread.
 */
package org.coursewright.measure;
