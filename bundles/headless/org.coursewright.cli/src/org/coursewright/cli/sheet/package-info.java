/** Commands about what the crew takes to the wall. */
package org.coursewright.cli.sheet;
