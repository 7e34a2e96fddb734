/** Light or dark: the platform's style sheets for what it draws itself, and the toolkit's own switch for native widgets. */
package org.coursewright.workbench.internal.appearance;
