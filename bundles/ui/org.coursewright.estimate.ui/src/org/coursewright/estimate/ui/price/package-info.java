/** What it costs: lines, build-up, range. */
package org.coursewright.estimate.ui.price;
