/** How lengths become pixels and back. */
package org.coursewright.diagram.ui.scale;
