/** What a wall would be like while something is dragged, worked out in the background. */
package org.coursewright.layout.ui.trial;
