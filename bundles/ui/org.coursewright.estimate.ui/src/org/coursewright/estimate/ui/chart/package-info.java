/** Charts, painted by hand so that they show what only an estimate has and look alike on screen and paper. */
package org.coursewright.estimate.ui.chart;
