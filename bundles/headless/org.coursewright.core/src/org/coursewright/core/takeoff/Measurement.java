package org.coursewright.core.takeoff;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Progress;
import org.coursewright.takeoff.quantities.BuildingQuantities;
import org.coursewright.takeoff.quantities.JointFill;
import org.coursewright.takeoff.quantities.LaidWall;
import org.coursewright.takeoff.quantities.UnitRule;
import org.coursewright.takeoff.quantities.WallQuantities;

/**
 * A building measured from its layout, for whatever follows from its quantities.
 *
 * @param brief what was read of the project
 * @param walls in the order of the layout
 * @param quantities of these walls
 * @param assumptions what the figures rest on
 * @param findings of the layout and of numbers that cannot be used, the gravest first
 */
public record Measurement(ProjectBrief brief, List<MeasuredWall> walls, BuildingQuantities quantities,
        List<String> assumptions, List<Finding> findings) {

    public Measurement {
        Objects.requireNonNull(brief, "brief");
        walls = List.copyOf(walls);
        Objects.requireNonNull(quantities, "quantities");
        assumptions = List.copyOf(assumptions);
        findings = List.copyOf(findings);
    }

    /**
     * @param brief of the project
     * @param layout how that project is laid
     * @param progress asked whether the result is still wanted
     * @return the walls of both, measured
     * @throws java.util.concurrent.CancellationException if it is no longer wanted
     */
    public static Measurement of(ProjectBrief brief, LayoutOutcome layout, Progress progress) {
        List<LaidBrief> laid = IntStream.range(0, layout.faces().size())
                .mapToObj(i -> brief.wall(layout.faces().get(i).mark()).map(
                        wall -> new LaidBrief(wall, layout.faces().get(i), layout.result().walls().get(i))))
                .flatMap(Optional::stream).toList();
        BuildingQuantities quantities = brief.shares().engine(rules(laid)).measure(
                laid.stream().map(LaidBrief::laid).toList(), progress);
        List<MeasuredWall> walls = IntStream.range(0, laid.size()).mapToObj(i -> laid.get(i).measured(
                quantities.walls().get(i), brief.shares().mortar().fill())).toList();
        return new Measurement(brief, walls, quantities,
                new Assumptions(laid, brief).sentences(), findings(brief, layout));
    }

    private static List<Finding> findings(ProjectBrief brief, LayoutOutcome layout) {
        Findings findings = new Findings();
        findings.addAll(layout.findings());
        findings.addAll(brief.findings());
        return findings.gravestFirst();
    }

    private static Map<String, UnitRule> rules(List<LaidBrief> walls) {
        Map<String, UnitRule> rules = new HashMap<>();
        walls.forEach(wall -> rules.put(wall.brief().unit().type(),
                new UnitRule(wall.face().stock().kerf(), false, wall.brief().breakage())));
        return rules;
    }

    /** A wall's brief, what was asked for it, and how it is laid. */
    record LaidBrief(WallBrief brief, WallFace face, WallLayout layout) {

        LaidWall laid() {
            return LayoutTranslator.wall(layout, brief);
        }

        MeasuredWall measured(WallQuantities quantities, JointFill fill) {
            return new MeasuredWall(brief, WallFaceArea.of(layout, brief), quantities, fill, face.length(),
                    layout.courses().stream().map(course -> course.course().bottom()).toList(),
                    (int) Stream.of(face.start(), face.end()).filter(WallEnd.Tied.class::isInstance).count());
        }
    }
}
