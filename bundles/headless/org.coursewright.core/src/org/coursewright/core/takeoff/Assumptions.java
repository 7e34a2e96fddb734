package org.coursewright.core.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.coursewright.bond.Course;
import org.coursewright.bond.CourseLayout;
import org.coursewright.core.takeoff.Measurement.LaidBrief;
import org.coursewright.measure.Length;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.quantities.JointFill;
import org.coursewright.takeoff.quantities.MortarRule;
import org.coursewright.takeoff.quantities.UnitShape;

/**
 * What a take-off rests on, to be printed with it.
 *
 * @param walls taken off
 * @param brief of the project
 */
record Assumptions(List<LaidBrief> walls, ProjectBrief brief) {

    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        walls.stream().map(this::module).distinct().forEach(sentences::add);
        sentences.addAll(shares());
        sentences.add("Units are solid; head and bed joints under a rake count in full.");
        sentences.add("Lintels have their bearing at both ends and no waste.");
        return sentences;
    }

    private List<String> shares() {
        MortarRule mortar = brief.shares().mortar();
        Set<String> sentences = new LinkedHashSet<>();
        walls.forEach(wall -> sentences.add("Breakage is %s of units %s%s.".formatted(TakeoffShares.percent(wall.brief()
                .breakage()), wall.brief().unit().type(),
                usual(wall.brief().breakage().equals(
                        TakeoffShares.USUAL_BREAKAGE)))));
        waste(mortar.firstMix(), mortar.firstWaste(), sentences);
        waste(mortar.restMix(), mortar.restWaste(), sentences);
        sentences.add(mortar.fill().equals(JointFill.FULL)
                ? "All joints are full."
                : "Joints are filled: bed %s, head %s.".formatted(TakeoffShares.percent(mortar.fill().bed()),
                        TakeoffShares.percent(mortar.fill().head())));
        return List.copyOf(sentences);
    }

    private static void waste(String mix, Fraction waste, Set<String> sentences) {
        sentences.add("Waste is %s of %s%s.".formatted(TakeoffShares.percent(waste), mix, usual(waste.equals(
                TakeoffShares.USUAL_WASTE))));
    }

    private static String usual(boolean usual) {
        return usual ? " (common practice, no source)" : "";
    }

    private String module(LaidBrief wall) {
        UnitShape unit = wall.brief().unit();
        String bed = wall.layout().courses().stream().map(CourseLayout::course).map(Course::height).findFirst()
                .map(height -> height.minus(unit.height())).map(brief.format()::format).orElse("none");
        return "%s measures %s × %s × %s; %s bond, bed joint %s, head joint about %s, saw kerf %s.".formatted(
                unit.type(), shown(unit.length()), shown(unit.width()), shown(unit.height()), wall.brief().bond(), bed,
                shown(wall.face().rule().nominal()), shown(wall.face().stock().kerf()));
    }

    private String shown(Length length) {
        return brief.format().format(length);
    }
}
