/**
 * Which small changes of dimensions spare cuts.
 *
 * <p>Start with {@link org.coursewright.bond.advice.BondAdvisor}: it is asked with a building and what may change in it, and
 * answers with a profile of every dimension and the set of changes that spares most within a budget. Nothing is promised
 * that has not been laid.
 */
package org.coursewright.bond.advice;
