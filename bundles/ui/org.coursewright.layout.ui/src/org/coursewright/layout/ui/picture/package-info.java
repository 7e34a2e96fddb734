/** Pictures of walls and plans in files. */
package org.coursewright.layout.ui.picture;
