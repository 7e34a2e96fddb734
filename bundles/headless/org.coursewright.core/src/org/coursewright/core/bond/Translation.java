package org.coursewright.core.bond;

import java.util.List;
import java.util.Map;

import org.coursewright.bond.BondRequest;
import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Finding;
import org.coursewright.measure.LengthFormat;

/**
 * What the bond engine is asked, and what was found while reading the project.
 *
 * @param request the walls that can be laid
 * @param references the walls of the request in the project, by their marks
 * @param abutments where walls end against the side of others and are tied to them
 * @param format how the project writes lengths
 * @param findings what is wrong or doubtful, the gravest first; walls that are not sound are told here and are not in
 *        the request
 */
public record Translation(BondRequest request, Map<String, ElementReference> references,
        List<Abutment> abutments, LengthFormat format, List<Finding> findings) {

    public Translation {
        references = Map.copyOf(references);
        abutments = List.copyOf(abutments);
        findings = List.copyOf(findings);
    }
}
