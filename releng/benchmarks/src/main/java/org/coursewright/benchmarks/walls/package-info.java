/** Seeded buildings to lay: small ones that can be proven, hostile ones, and coordinated ones. All are invented. */
package org.coursewright.benchmarks.walls;
