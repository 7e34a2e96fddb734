package org.coursewright.takeoff.quantities;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import org.coursewright.takeoff.Fraction;

/**
 * How much of each joint is filled with mortar. Earthen masonry that will be plastered may have its head joints partly
 * open (New Mexico Earthen Building Materials Code, NMAC 14.7.4.11 E); its bed joints are full.
 *
 * @param bed share of the bed joint, 0 to 1
 * @param head share of the head joint, 0 to 1
 */
public record JointFill(Fraction bed, Fraction head) {

    /** All joints full. */
    public static final JointFill FULL = new JointFill(Fraction.ONE, Fraction.ONE);

    public JointFill {
        requireShare("bed", bed);
        requireShare("head", head);
    }

    private static void requireShare(String joint, Fraction share) {
        require(share.signum() >= 0 && share.compareTo(Fraction.ONE) <= 0,
                "The share of the %s joint that is filled is %s: give one from 0 to 1.", joint, share);
    }
}
