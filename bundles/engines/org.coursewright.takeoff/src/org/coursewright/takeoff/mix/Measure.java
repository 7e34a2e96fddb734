package org.coursewright.takeoff.mix;

/** How an amount of an ingredient is measured. */
public enum Measure {
    /** Volume as it lies loose and moist (m³), bulking included. */
    LOOSE_VOLUME,
    /** Volume as it lies compacted (m³). */
    COMPACTED_VOLUME,
    /** Mass without any water (kg). */
    DRY_MASS,
    /** Mass as delivered, with its moisture (kg). */
    MOIST_MASS
}
