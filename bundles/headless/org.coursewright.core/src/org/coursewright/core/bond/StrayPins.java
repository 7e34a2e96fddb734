package org.coursewright.core.bond;

import org.coursewright.bond.Pin;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Length;

/** Tells of pins that lie in no run: in an opening, a lintel or another wall, or above the top. */
final class StrayPins {

    private final Translation translation;
    private final Findings findings;

    StrayPins(Translation translation, Findings findings) {
        this.translation = translation;
        this.findings = findings;
    }

    void tell(WallFace face, WallLayout layout) {
        for (Pin pin : face.pins()) {
            if (!isInRun(pin, layout)) {
                findings.warning("pin.no-run",
                        translation.references().get(face.mark()).at("course " + pin.course()),
                        "No run of the course lies at %s, where a pin is. Move the pin or take it out."
                                .formatted(translation.format().format(pin.at())));
            }
        }
    }

    private static boolean isInRun(Pin pin, WallLayout layout) {
        boolean laid = layout.courses().stream().filter(course -> course.course().number() == pin.course())
                .flatMap(course -> course.runs().stream()).anyMatch(run -> isBetween(run.from(), pin.at(), run.to()));
        return laid || layout.unfillable().stream().filter(run -> run.course() == pin.course())
                .anyMatch(run -> isBetween(run.from(), pin.at(), run.to()));
    }

    private static boolean isBetween(Length from, Length at, Length to) {
        return !at.isLessThan(from) && at.isLessThan(to);
    }
}
