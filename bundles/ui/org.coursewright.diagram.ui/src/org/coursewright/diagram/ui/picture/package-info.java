/** Diagrams as files for letters and web pages. */
package org.coursewright.diagram.ui.picture;
