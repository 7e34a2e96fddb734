/** Writing what the editors show as CSV, XLSX or PDF, by the headless writers. */
package org.coursewright.estimate.ui.export;
