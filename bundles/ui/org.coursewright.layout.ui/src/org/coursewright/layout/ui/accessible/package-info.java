/** What those hear who do not see the screen. */
package org.coursewright.layout.ui.accessible;
