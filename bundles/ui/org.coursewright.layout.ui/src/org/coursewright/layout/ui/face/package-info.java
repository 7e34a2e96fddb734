/** The face of one laid wall, ready to be drawn: where each piece lies, and where laps are short. */
package org.coursewright.layout.ui.face;
