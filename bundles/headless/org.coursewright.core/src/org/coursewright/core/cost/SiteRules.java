package org.coursewright.core.cost;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.allied.Coating;

/**
 * Scaffold, ties and sealer.
 *
 * @param reach height that is laid from the ground
 * @param lift from deck to deck
 * @param tieCourses one bed joint in so many has ties, or 0 for none
 * @param tiesPerJoint in such a joint
 * @param sealer on grade beams, if chosen
 */
record SiteRules(Length reach, Length lift, int tieCourses, int tiesPerJoint, Optional<Coating> sealer) {

    /** Usual reach and lift; common practice, no source. */
    static final Length USUAL_LIFT = Length.ofMillimetres(1500);

    SiteRules {
        Objects.requireNonNull(reach, "reach");
        Objects.requireNonNull(lift, "lift");
        Objects.requireNonNull(sealer, "sealer");
    }
}
