/** Headless commands. */
package org.coursewright.cli;
