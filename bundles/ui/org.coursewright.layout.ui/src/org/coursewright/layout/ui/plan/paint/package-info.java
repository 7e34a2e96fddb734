/** Draws plans: on the screen and into pictures alike. */
package org.coursewright.layout.ui.plan.paint;
