package org.coursewright.core.bond;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.coursewright.bond.JointRule;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.measure.Length;
import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;

/**
 * The rule one wall is laid by: what the wall says, else what the project says, else what is usual.
 *
 * <p>Usual are a lap of a quarter of the unit's visible length (New Mexico Administrative Code 14.7.4.11 E asks for 25 % in
 * earthen masonry) and joints of 3/8 to 3/4 in, 1/2 in aimed at, or 8 to 15 mm, 10 mm aimed at (common practice, no
 * source). Local codes and the designer may ask for others.
 *
 * @param joints what head joints must keep
 * @param bedLeast thinnest bed joint
 * @param bedNominal bed joint aimed at
 * @param bedMost thickest bed joint
 * @param shortestPiece shortest piece that may be cut where a rule says so
 */
record LayingRule(JointRule joints, Length bedLeast, Length bedNominal, Length bedMost,
        Optional<Length> shortestPiece) {

    /** Reads the rule of a wall whose unit shows {@code face} along the wall. */
    static LayingRule of(Wall wall, Project project, Length face) {
        Source source = new Source(wall.getBondRule(), project.getBondRule());
        JointRange usual = JointRange.usual(ProjectFormat.of(project).unit());
        JointRule joints = new JointRule(source.first(BondRule::getLeastLap).orElse(Length.ofUnits(face.units() / 4)),
                source.first(BondRule::getHeadLeast).orElse(usual.least()),
                source.first(BondRule::getHeadNominal).orElse(usual.nominal()),
                source.first(BondRule::getHeadMost).orElse(usual.most()));
        return new LayingRule(joints, source.first(BondRule::getBedLeast).orElse(usual.least()),
                source.first(BondRule::getBedNominal).orElse(usual.nominal()),
                source.first(BondRule::getBedMost).orElse(usual.most()),
                source.first(BondRule::getShortestPiece));
    }

    /** Where a value is looked for: the wall's own rule, then the project's; either may be missing. */
    private record Source(BondRule ofWall, BondRule ofProject) {

        Optional<Length> first(Function<BondRule, Length> value) {
            return Stream.of(Optional.ofNullable(ofWall), Optional.ofNullable(ofProject)).flatMap(Optional::stream)
                    .map(rule -> Optional.ofNullable(value.apply(rule))).flatMap(Optional::stream).findFirst();
        }
    }
}
