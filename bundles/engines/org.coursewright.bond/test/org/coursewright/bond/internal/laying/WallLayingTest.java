package org.coursewright.bond.internal.laying;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Supplier;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.RandomWalls;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.handing.AlternatingHanding;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.proof.CutProof;
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
}
