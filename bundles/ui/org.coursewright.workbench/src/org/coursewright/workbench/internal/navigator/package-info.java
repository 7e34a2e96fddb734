/** The tree of open projects. */
package org.coursewright.workbench.internal.navigator;
