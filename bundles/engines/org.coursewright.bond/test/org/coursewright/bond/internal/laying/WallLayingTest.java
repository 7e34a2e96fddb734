package org.coursewright.bond.internal.laying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Supplier;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.RandomWalls;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.handing.AlternatingHanding;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.proof.CutProof;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** What laying one wall asks for, on random walls. */
class WallLayingTest {

    private static final Supplier<CutProof> NO_PROOF = () -> {
        throw new AssertionError("No proof is needed.");
    };

    private static WallLaying laying(BondRequest request) {
        Handing handing = new Handing(request.meetings(), AlternatingHanding.of(request));
        return new WallLaying(request.walls().get(0), handing);
    }

    @Test
    void whatIsMetAtTheBeginningIsLaidWithoutProofAndNoProofRefutesIt() {
        RandomWalls walls = new RandomWalls(21);
        int met = 0;
        for (int index = 0; index < 60; index++) {
            BondRequest request = walls.wall("40", "90", 6, 1);
            WallLaying laying = laying(request);
            if (laying.begin(NO_PROOF, Progress.NONE)) {
                WallLayout layout = laying.lay();

                assertThat(layout.optimal()).isTrue();
                assertThat(laying(request).prove(Progress.NONE).cuts()).isEqualTo(layout.cutPieces());
                met++;
            }
        }
        assertThat(met).isGreaterThan(20);
    }

    @Test
    void aWallIsLaidBetterFromWhatWasTriedAndNeverWorseThanBefore() {
        RandomWalls walls = new RandomWalls(5);
        int open = 0;
        int better = 0;
        for (int index = 0; index < 80; index++) {
            BondRequest request = walls.wall("150", "300", 6, 3);
            WallLaying laying = laying(request);
            laying.begin(() -> laying.prove(Progress.NONE), Progress.NONE);
            WallLayout laid = laying.lay();
            if (laying.mayBeBetter()) {
                WallLaying anew = laying(request);
                WallLayout again = anew.layBetter(laying.tried(), Progress.NONE);

                laying.tried().forEach((shape, tried) -> assertThat(anew.tried().get(shape)).startsWith(
                        tried.toArray(Pattern[]::new)));
                assertThat(again.lapViolations()).isLessThanOrEqualTo(laid.lapViolations());
                assertThat(again.cutPieces()).isLessThanOrEqualTo(laid.cutPieces());
                assertThat(again.lowerBound()).isGreaterThanOrEqualTo(laid.lowerBound());
                open++;
                better += again.optimal() || again.cutPieces() < laid.cutPieces() ? 1 : 0;
            }
        }
        assertThat(open).isGreaterThan(3);
        assertThat(better).isGreaterThan(3);
    }
}
