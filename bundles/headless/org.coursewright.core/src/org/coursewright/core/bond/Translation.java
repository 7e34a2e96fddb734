package org.coursewright.core.bond;

import java.util.List;

import org.coursewright.bond.BondRequest;
import org.coursewright.core.finding.Finding;

/**
 * What the bond engine is asked, and what was found while reading the project.
 *
 * @param request the walls that can be laid
 * @param findings what is wrong or doubtful, the gravest first; walls that are not sound are told here and are not in
 *        the request
 */
public record Translation(BondRequest request, List<Finding> findings) {

    public Translation {
        findings = List.copyOf(findings);
    }
}
