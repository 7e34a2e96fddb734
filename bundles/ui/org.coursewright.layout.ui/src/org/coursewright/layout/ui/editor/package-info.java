/** The editor of a wall's face. */
package org.coursewright.layout.ui.editor;
