/** What is wrong or doubtful, where, and what to do about it. */
package org.coursewright.core.finding;
