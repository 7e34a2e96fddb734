/** Scenarios side by side. */
package org.coursewright.estimate.ui.scenario;
