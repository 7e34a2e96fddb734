/** What the editors of an estimate have in common. */
package org.coursewright.estimate.ui.part;
