package org.coursewright.bond.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/**
 * Holds what profiles say of every value of a dimension against the wall as it is laid for that value. The solver remembers:
 * with every corner handed a value changes one wall only, and what is asked again of the same value costs nothing.
 */
final class ProfileAudit {

    private final BondSolver solver = BondSolver.remembering();
    private final BondRequest handed;

    /** @param handed a building with the handing of every meeting given, for a value must not change it */
    ProfileAudit(BondRequest handed) {
        this.handed = handed;
    }

    void check(DimensionProfile profile) {
        assertThat(profile.points())
                .allSatisfy(point -> check(point, laid(profile.adjustable(), point.change())));
    }

    static void check(ProfilePoint point, WallLayout laid) {
        LayingCost said = new LayingCost(point.unfillable(), point.lapViolations(), point.cutPieces());
        assertThat(point.leastCuts()).isLessThanOrEqualTo(laid.cutPieces());
        switch (point.basis()) {
            case LAID -> assertThat(said).isEqualTo(LayingCost.of(laid));
            case FITTED -> assertThat(said).satisfiesAnyOf(
                    cost -> assertThat(cost).isGreaterThanOrEqualTo(LayingCost.of(laid)),
                    cost -> assertThat(laid.optimal()).isFalse());
            case BOUND -> assertThat(said).isLessThanOrEqualTo(LayingCost.of(laid));
        }
    }

    private WallLayout laid(Adjustable adjustable, Length change) {
        List<WallFace> walls = handed.walls().stream().map(face -> face.mark().equals(adjustable.wall())
                ? changed(face, adjustable, change)
                : face).toList();
        return solver.solve(new BondRequest(walls, handed.meetings()), Progress.NONE).walls().stream()
                .filter(wall -> wall.mark().equals(adjustable.wall())).findFirst().orElseThrow();
    }

    private static WallFace changed(WallFace face, Adjustable adjustable, Length change) {
        Length shift = adjustable.dimension() == Dimension.OFFSET ? change : Length.ZERO;
        List<Obstacle> obstacles = face.obstacles().stream().map(obstacle -> adjustable.opening()
                .filter(obstacle.mark()::equals).isPresent()
                        ? new Obstacle(obstacle.kind(), obstacle.mark(), obstacle.from().plus(shift),
                                obstacle.to().plus(change), obstacle.firstCourse(), obstacle.lastCourse(),
                                obstacle.meeting())
                        : obstacle)
                .toList();
        return new WallFace(face.mark(), face.length(), face.stock(), face.rule(), face.courses(), face.start(),
                face.end(), obstacles);
    }
}
