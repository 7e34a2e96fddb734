/**
 * The headless commands: where they start, how they end, and how bundles add more.
 *
 * <p>Start with {@link org.coursewright.cli.CommandLineEntry}. Commands themselves are in the packages below and come in
 * through {@link org.coursewright.cli.CommandContribution}. Results go to standard output and only when they are
 * complete, messages to standard error.
 */
package org.coursewright.cli;
