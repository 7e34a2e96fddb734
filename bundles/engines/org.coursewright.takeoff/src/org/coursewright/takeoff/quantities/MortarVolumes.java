package org.coursewright.takeoff.quantities;

import java.util.Objects;

import org.coursewright.takeoff.Volume;

/**
 * Mortar in place, without waste, by where it lies, and what is left open.
 *
 * @param bed in bed joints
 * @param head in head joints between whole units and specials
 * @param besideCuts in head joints that touch a cut piece
 * @param open the part of the joints that is not filled
 */
public record MortarVolumes(Volume bed, Volume head, Volume besideCuts, Volume open) {

    /** No joints. */
    public static final MortarVolumes NONE = new MortarVolumes(Volume.ZERO, Volume.ZERO, Volume.ZERO, Volume.ZERO);

    public MortarVolumes {
        Objects.requireNonNull(bed, "bed");
        Objects.requireNonNull(head, "head");
        Objects.requireNonNull(besideCuts, "besideCuts");
        Objects.requireNonNull(open, "open");
    }

    /** @return all mortar: bed, head and beside cuts */
    public Volume net() {
        return bed.plus(head).plus(besideCuts);
    }

    /** @return both together, place by place */
    public MortarVolumes plus(MortarVolumes other) {
        return new MortarVolumes(bed.plus(other.bed), head.plus(other.head), besideCuts.plus(other.besideCuts),
                open.plus(other.open));
    }
}
