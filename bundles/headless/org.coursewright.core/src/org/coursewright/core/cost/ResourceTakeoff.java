package org.coursewright.core.cost;

import java.util.List;

import org.coursewright.core.finding.Finding;
import org.coursewright.core.takeoff.Measurement;

/**
 * All resources that a building takes.
 *
 * @param lines by resource, element and kind of work
 * @param findings what could not be counted
 */
public record ResourceTakeoff(List<ResourceLine> lines, List<Finding> findings) {

    public ResourceTakeoff {
        lines = List.copyOf(lines);
        findings = List.copyOf(findings);
    }

    static ResourceTakeoff of(Measurement measurement, CostBrief brief) {
        Resources resources = new Resources();
        new UnitResources(measurement, brief, resources).add();
        new WallWork(measurement, brief, resources).add();
        new AlliedWork(measurement, brief, resources).add();
        return finished(brief, resources);
    }

    /** Adds hours and haulage of what was gathered. */
    static ResourceTakeoff finished(CostBrief brief, Resources resources) {
        new Hours(brief.tasks(), resources).add();
        if (brief.rate(Haulage.RESOURCE).isPresent()) {
            Haulage.addTo(resources);
        }
        return new ResourceTakeoff(Merged.of(resources.lines()), resources.findings().gravestFirst());
    }
}
