package org.coursewright.core.bond;

import java.util.List;

import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.ElementNames;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Wall;

/**
 * Tells what is doubtful about how walls meet. Lists of walls are those that meet, the one that it leads to first.
 *
 * @param format of lengths
 * @param findings to add to
 */
record MeetingFindings(LengthFormat format, Findings findings) {

    void skew(List<Wall> walls) {
        warning("meeting.skew", walls, "The walls do not meet square. Units cut to the angle are not counted.");
    }

    void coursesDiffer(List<Wall> walls, WallPlan one, WallPlan other) {
        warning("meeting.courses-differ", walls,
                "Their courses do not lie at the same heights (%s of %s from a base at %s, %s of %s from a base at %s), so they cannot be laced together. Bring the bases to the same course line or tie one wall to the other."
                        .formatted(one.mark(), format.format(one.lines().courseHeight()),
                                format.format(one.lines().base()), other.mark(),
                                format.format(other.lines().courseHeight()), format.format(other.lines().base())));
    }

    void inLine(List<Wall> walls) {
        warning("meeting.in-line", walls,
                "Two walls lie in one line and would meet with a straight joint in every course. Draw them as one wall, or make it a movement joint on purpose.");
    }

    void splitBar(List<Wall> walls) {
        warning("meeting.split-bar", walls,
                "Three or more walls end at one point. Draw the two that lie in one line as one wall, so that it can be bonded through.");
    }

    void tied(WallPlan stem, WallPlan bar) {
        findings.note("meeting.tied", ElementNames.of(stem.wall(), List.of(stem.wall(), bar.wall())),
                "%s ends against %s and is tied to it, not bonded. Ties and their spacing are for the structural designer and the local code."
                        .formatted(stem.mark(), bar.mark()));
    }

    private void warning(String rule, List<Wall> walls, String words) {
        findings.warning(rule, ElementNames.of(walls.get(0), walls), words);
    }
}
