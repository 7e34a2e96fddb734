package org.coursewright.core.takeoff;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.Course;
import org.coursewright.bond.CourseLayout;
import org.coursewright.core.takeoff.ProjectTakeoff.LaidBrief;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.takeoff.quantities.UnitShape;

/**
 * What a take-off rests on, to be printed with it.
 *
 * @param walls taken off
 * @param format for lengths
 * @param shares ordered on top
 */
record Assumptions(List<LaidBrief> walls, LengthFormat format, TakeoffShares shares) {

    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        walls.stream().map(this::module).distinct().forEach(sentences::add);
        sentences.add("Breakage is %s of units, waste %s of mortar (common practice, no source).".formatted(
                TakeoffShares.percent(shares.breakage()), TakeoffShares.percent(shares.mortarWaste())));
        sentences.add("Units are solid and all joints full; head and bed joints under a rake count in full.");
        sentences
                .add("Lintels have their bearing at both ends and no waste. No mix, stabiliser or density is assumed.");
        return sentences;
    }

    private String module(LaidBrief wall) {
        UnitShape unit = wall.brief().unit();
        String bed = wall.layout().courses().stream().map(CourseLayout::course).map(Course::height).findFirst()
                .map(height -> height.minus(unit.height())).map(format::format).orElse("none");
        return "%s measures %s × %s × %s; %s bond, bed joint %s, head joint about %s, saw kerf %s.".formatted(
                unit.type(), shown(unit.length()), shown(unit.width()), shown(unit.height()), wall.brief().bond(), bed,
                shown(wall.face().rule().nominal()), shown(wall.face().stock().kerf()));
    }

    private String shown(Length length) {
        return format.format(length);
    }
}
