/**
 * Take-offs and prices as tables on paper and for spreadsheets: a {@link org.coursewright.exchange.report.Report} in,
 * a CSV, XLSX or PDF file out through {@link org.coursewright.exchange.report.ReportForm}.
 */
package org.coursewright.exchange.report;
