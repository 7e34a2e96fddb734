/** Mixes for the people who mix them. */
package org.coursewright.estimate.ui.mix;
