/**
 * Findings as markers of the platform: whoever has something to say about an element makes a marker of the type given here on the
 * project's resource, and it is listed, decorates the navigator and leads to the element.
 */
package org.coursewright.workbench.finding;
