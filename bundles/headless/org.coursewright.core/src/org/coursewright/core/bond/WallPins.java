package org.coursewright.core.bond;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Pin;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.ElementNames;
import org.coursewright.measure.Length;
import org.coursewright.model.building.GaugePin;
import org.coursewright.model.building.PiecePin;
import org.coursewright.model.building.Wall;

/** Reads what somebody decided about single runs of a wall. */
final class WallPins {

    private WallPins() {
    }

    /** @return the pins that say something; the findings tell of the others */
    static List<Pin> of(Wall wall, Findings findings) {
        return wall.getPins().stream().map(pin -> read(wall, pin, findings)).flatMap(Optional::stream).toList();
    }

    private static Optional<Pin> read(Wall wall, org.coursewright.model.building.Pin pin, Findings findings) {
        Length at = Optional.ofNullable(pin.getAt()).orElse(Length.ZERO);
        Optional<Pin> read = Optional.empty();
        if (pin instanceof GaugePin gauge) {
            read = Optional.ofNullable(gauge.getJoint()).map(joint -> new Pin.OfJoint(pin.getCourse(), at, joint));
        } else if (pin instanceof PiecePin piece) {
            read = Optional.ofNullable(piece.getLength())
                    .map(length -> new Pin.OfPiece(pin.getCourse(), at, length));
        }
        if (read.isEmpty()) {
            findings.warning("pin.empty", ElementNames.of(wall).at("course " + pin.getCourse()),
                    "A pin there fixes nothing. Give it a joint or a length, or take it out.");
        }
        return read;
    }
}
