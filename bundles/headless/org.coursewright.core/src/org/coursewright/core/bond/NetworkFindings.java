package org.coursewright.core.bond;

import org.coursewright.core.finding.Findings;
import org.coursewright.core.geometry.Crossing;
import org.coursewright.core.geometry.LeftOut;
import org.coursewright.core.geometry.NearMiss;
import org.coursewright.core.geometry.Place;
import org.coursewright.core.geometry.WallNetwork;
import org.coursewright.measure.LengthFormat;

/** Tells what is wrong or doubtful about how the walls of a storey lie in the plan. */
final class NetworkFindings {

    private final LengthFormat format;
    private final Findings findings;

    NetworkFindings(LengthFormat format, Findings findings) {
        this.format = format;
        this.findings = findings;
    }

    void tell(WallNetwork network) {
        network.leftOut().forEach(this::tell);
        network.crossings().forEach(this::tell);
        network.nearMisses().forEach(this::tell);
    }

    private void tell(LeftOut wall) {
        String element = "wall " + wall.mark();
        switch (wall.reason()) {
            case NO_LENGTH -> findings.invalid("wall.zero-length", element,
                    "Its centre line begins and ends at the same point. Give it two different ends or take it out.");
            case NO_THICKNESS -> findings.invalid("wall.thickness", element,
                    "It has no thickness that a wall can have. Check its unit type.");
            case TOO_FAR -> findings.invalid("wall.too-far", element,
                    "It lies too far from the plan's origin. Check the unit of measure.");
            case SAME_MARK -> findings.invalid("wall.duplicate-mark", element,
                    "Another wall has the same mark. Give every wall a mark of its own.");
        }
    }

    private void tell(Crossing crossing) {
        String how = crossing.kind() == Crossing.Kind.CROSS
                ? "They cross at %s, %s. Split one of them there, so that it ends against the other."
                : "They lie in each other from %s, %s on. Shorten one of them or take it out.";
        findings.invalid("wall.crossing", "walls " + crossing.first() + " and " + crossing.second(),
                how.formatted(format.format(crossing.x()), format.format(crossing.y())));
    }

    private void tell(NearMiss miss) {
        String end = miss.end().place() == Place.START ? "start" : "end";
        findings.warning("wall.near-miss", "wall " + miss.end().mark(),
                "Its %s misses wall %s by %s. If they are to meet, put it at %s, %s.".formatted(end,
                        miss.other().mark(),
                        format.format(miss.distance()), format.formatExact(miss.joinX()),
                        format.formatExact(miss.joinY())));
    }
}
