package org.coursewright.core.bond;

import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.CutReason;
import org.coursewright.bond.CutReasons;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.WallFace;
import org.coursewright.core.finding.Finding;

/**
 * How the building is laid, and what was found on the way.
 *
 * @param request what the engine was asked
 * @param result how every sound wall is laid
 * @param totals pieces of all walls
 * @param findings what is wrong or doubtful, the gravest first
 */
public record LayoutOutcome(BondRequest request, BondResult result, UnitCount totals, List<Finding> findings) {

    public LayoutOutcome {
        Objects.requireNonNull(request, "request");
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(totals, "totals");
        findings = List.copyOf(findings);
    }

    /** @return where walls take turns to run through, as they were asked for */
    public List<Meeting> meetings() {
        return request.meetings();
    }

    /** @return the walls as they were asked to be laid, in the order of the layouts in the result */
    public List<WallFace> faces() {
        return request.walls();
    }

    /**
     * How many pieces each course of a wall takes.
     *
     * @param mark of the wall
     * @return the pieces by the course's number, from the bottom up; empty if the wall is not laid
     */
    public SortedMap<Integer, UnitCount> courses(String mark) {
        return result.walls().stream().filter(wall -> wall.mark().equals(mark))
                .flatMap(wall -> wall.courses().stream()).collect(Collectors.toMap(
                        laid -> laid.course().number(), UnitCount::of, (one, other) -> one, TreeMap::new));
    }

    /**
     * Why pieces of a wall are cut.
     *
     * @param wall place of the wall among {@link #faces()}, from 0
     * @return a reason for every run with cut pieces, from the bottom up
     */
    public List<CutReason> cutReasons(int wall) {
        return new CutReasons(request, result).of(wall);
    }
}
