/**
 * How changes that spare cuts are found: each value of each dimension is bounded, the promising ones are laid, and a choice
 * within the budget is made over what has been laid.
 */
package org.coursewright.bond.advice.internal;
