package org.coursewright.cli.layout;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.Meeting;
import org.coursewright.bond.WallLayout;
import org.coursewright.cli.layout.LayResult.LaidWall;
import org.coursewright.core.bond.CourseNumbers;
import org.coursewright.core.bond.CutGroup;
import org.coursewright.core.bond.CutWords;
import org.coursewright.measure.LengthFormat;

/** Why pieces are cut: one line for each cause that holds in some courses of a wall. */
final class CutTable {

    private final LengthFormat format;
    private final List<Meeting> meetings;

    CutTable(LengthFormat format, List<Meeting> meetings) {
        this.format = format;
        this.meetings = meetings;
    }

    /** @return a heading and the causes, nothing if the wall has no cuts */
    List<String> lines(LaidWall wall) {
        CutWords words = new CutWords(format, wall.face().mark(), meetings);
        List<CutGroup> groups = CutGroup.of(wall.cutReasons(), words);
        List<String> lines = new ArrayList<>();
        if (!groups.isEmpty()) {
            lines.add("Why pieces of wall %s are cut (%s):".formatted(wall.face().mark(), proof(wall.layout())));
        }
        groups.forEach(group -> lines.add("  %d cut in %s %s. %s".formatted(group.cuts(),
                group.courses().size() == 1 ? "course" : "courses", CourseNumbers.of(group.courses()), group.why())));
        return lines;
    }

    private static String proof(WallLayout layout) {
        return layout.optimal()
                ? "no layout of it has fewer cuts, proven"
                : "at least %d of %d are proven to be needed".formatted(layout.lowerBound(), layout.cutPieces());
    }
}
