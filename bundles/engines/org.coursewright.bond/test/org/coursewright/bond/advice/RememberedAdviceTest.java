package org.coursewright.bond.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.advice.AdviceCases.adjustables;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.RandomRooms;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Advice on a building that a solver has laid and remembers. */
class RememberedAdviceTest {

    private static AdviceRequest request(BondRequest room) {
        return new AdviceRequest(room, adjustables(room), List.of(), in("1/4"), Optional.of(in("4")));
    }

    /** How often a computation asks whether it is still wanted: a measure of its work. */
    private static int work(BondAdvisor advisor, AdviceRequest request) {
        AtomicInteger asked = new AtomicInteger();
        advisor.advise(request, Progress.until(() -> asked.incrementAndGet() < 0));
        return asked.get();
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 6})
    void isThatOfAnAdvisorWithoutMemory(long seed) {
        AdviceRequest request = request(new RandomRooms(seed).room());
        Advice afresh = BondAdvisor.standard().advise(request, Progress.NONE);
        BondSolver solver = BondSolver.remembering();
        solver.solve(afresh.changed(), Progress.NONE);
        solver.solve(request.building(), Progress.NONE);

        assertThat(BondAdvisor.of(solver).advise(request, Progress.NONE)).isEqualTo(afresh);
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 3})
    void doesNotLayAgainWhatIsRemembered(long seed) {
        AdviceRequest request = request(new RandomRooms(seed).room());
        int afresh = work(BondAdvisor.standard(), request);
        BondSolver solver = BondSolver.remembering();
        int laying = work(BondAdvisor.of(solver), new AdviceRequest(request.building(), List.of(), List.of(), in("1/4"),
                Optional.empty()));
        solver.solve(request.building(), Progress.NONE);

        assertThat(work(BondAdvisor.of(solver), request)).isLessThan(afresh - laying / 2);
    }

    @Test
    void leavesWhatTheSolverAnswersNextAsItWas() {
        AdviceRequest request = request(new RandomRooms(2).room());
        BondSolver solver = BondSolver.remembering();
        solver.solve(request.building(), Progress.NONE);
        BondSolver asked = BondSolver.remembering();
        asked.solve(request.building(), Progress.NONE);
        Advice advice = BondAdvisor.of(asked).advise(request, Progress.NONE);

        assertThat(asked.first(advice.changed(), Progress.NONE))
                .isEqualTo(solver.first(advice.changed(), Progress.NONE));
    }
}
