/** The strip under a wall: what it needs for every place of one of its openings. */
package org.coursewright.layout.ui.strip;
