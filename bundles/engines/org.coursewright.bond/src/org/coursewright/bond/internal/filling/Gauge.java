package org.coursewright.bond.internal.filling;

/**
 * A number of pieces and a joint with which a run may be filled.
 *
 * @param pieces number of pieces, at least one
 * @param joints number of joints
 * @param jointTotal width of all joints together
 * @param shortfall what the pieces together fall short of as many whole units
 */
public record Gauge(int pieces, int joints, long jointTotal, long shortfall) {
}
