/**
 * Whether single elements make sense by themselves: marks, dimensions, rules. What is not sound is told and left out of
 * every computation, so that engines never meet it.
 */
package org.coursewright.core.validity;
