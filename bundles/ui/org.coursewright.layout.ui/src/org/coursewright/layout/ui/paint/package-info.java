/** How the face of a wall is drawn, on the screen and in pictures. */
package org.coursewright.layout.ui.paint;
