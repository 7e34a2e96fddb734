/** The plan editor. */
package org.coursewright.layout.ui.plan.editor;
