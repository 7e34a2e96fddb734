/** JMH benchmarks of the bond engine. */
package org.coursewright.benchmarks.jmh;
