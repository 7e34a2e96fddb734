/** Commands about how walls are laid. */
package org.coursewright.cli.layout;
