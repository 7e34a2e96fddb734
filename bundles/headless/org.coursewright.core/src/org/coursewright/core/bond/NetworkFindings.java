package org.coursewright.core.bond;

import java.util.List;
import java.util.Map;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.geometry.Crossing;
import org.coursewright.core.geometry.LeftOut;
import org.coursewright.core.geometry.NearMiss;
import org.coursewright.core.geometry.Place;
import org.coursewright.core.geometry.WallNetwork;
import org.coursewright.core.validity.ElementNames;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Wall;

/** Tells what is wrong or doubtful about how the walls of a storey lie in the plan. */
final class NetworkFindings {

    private final LengthFormat format;
    private final Findings findings;
    private final Map<String, Wall> walls;

    /**
     * @param walls all that are in the network, by their marks
     */
    NetworkFindings(LengthFormat format, Findings findings, Map<String, Wall> walls) {
        this.walls = Map.copyOf(walls);
        this.format = format;
        this.findings = findings;
    }

    void tell(WallNetwork network) {
        network.leftOut().forEach(this::tell);
        network.crossings().forEach(this::tell);
        network.nearMisses().forEach(this::tell);
    }

    private void tell(LeftOut wall) {
        ElementReference element = ElementNames.of(walls.get(wall.mark()));
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
        String how = switch (crossing.kind()) {
            case CROSS ->
                "They cross at %s east, %s north. Split one of them there, so that it ends against the other.";
            case OVERLAP -> "They lie in each other from %s east, %s north on. Shorten one of them or take it out.";
            case SIDE_BY_SIDE ->
                "They run side by side and lie in each other from %s east, %s north on. Move one of them aside, "
                        + "shorten it or take it out.";
        };
        findings.invalid("wall.crossing", pair(crossing),
                how.formatted(format.format(crossing.x()), format.format(crossing.y())));
    }

    /** Leads to the second wall: where two lie in each other, it is the one that is not laid. */
    private ElementReference pair(Crossing crossing) {
        Wall second = walls.get(crossing.second());
        return ElementNames.of(second, List.of(walls.get(crossing.first()), second));
    }

    private void tell(NearMiss miss) {
        String end = miss.end().place() == Place.START ? "start" : "end";
        findings.warning("wall.near-miss", ElementNames.of(walls.get(miss.end().mark())),
                "Its %s misses wall %s by %s. If they are to meet, put it at %s east, %s north.".formatted(end,
                        miss.other().mark(),
                        format.format(miss.distance()), format.formatExact(miss.joinX()),
                        format.formatExact(miss.joinY())));
    }
}
