package org.coursewright.layout.ui.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

import org.coursewright.bond.BondSolver;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.plan.PlanSample;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Opening;
import org.eclipse.core.runtime.jobs.Job;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The test's thread stands for that of the user interface. */
@Timeout(60)
class DragTrialTest {

    private static final OpeningPlace HERE = place(41);
    private static final OpeningPlace FURTHER = place(43);

    private final PlanSample plan = PlanSample.room();
    private final BlockingQueue<Runnable> display = new LinkedBlockingQueue<>();
    private final List<OpeningPlace> told = new ArrayList<>();
    private DragTrial trial;

    @BeforeEach
    void takeHoldOfADoor() {
        plan.project.setBondRule(BuildingFactory.eINSTANCE.createBondRule());
        Opening door = PlanSample.door(plan.wall("W1"), "D1", 40, 36);
        trial = new DragTrial(door, new BuildingLayout(BondSolver.standard()).lay(plan.project, Progress.NONE),
                display::add, tried -> told.add(tried.place()), new RightOfWay());
    }

    @AfterEach
    void letGo() {
        trial.end();
    }

    private static OpeningPlace place(long inches) {
        return new OpeningPlace(Length.ofInches(inches), Length.ofInches(36));
    }

    @Test
    void newPlaceIsAnsweredOnceTheWallIsLaid() throws InterruptedException {
        trial.ask(HERE, List.of());
        assertThat(told).isEmpty();
        answer();

        assertThat(told).containsExactly(HERE);
    }

    @Test
    void placeThatTheMouseComesBackToIsAnsweredAtOnce() throws InterruptedException {
        trial.ask(HERE, List.of());
        answer();
        trial.ask(FURTHER, List.of());
        answer();
        trial.ask(HERE, List.of());

        assertThat(told).containsExactly(HERE, FURTHER, HERE);
    }

    @Test
    void placeThatWasLaidAheadIsAnsweredAtOnce() throws InterruptedException {
        trial.ask(HERE, List.of(FURTHER));
        awaitWork();
        trial.ask(FURTHER, List.of());

        assertThat(told).containsExactly(FURTHER);
    }

    @Test
    void placeNearbyIsAnsweredAtOnceIfThereWasTime() throws InterruptedException {
        trial.lookAhead(List.of(HERE));
        awaitWork();
        trial.ask(HERE, List.of());

        assertThat(told).containsExactly(HERE);
    }

    @Test
    void earlierPlaceIsNotShownAfterALaterOne() throws InterruptedException {
        trial.ask(HERE, List.of(FURTHER));
        awaitWork();
        trial.ask(FURTHER, List.of());
        answer();

        assertThat(told).containsExactly(FURTHER);
    }

    @Test
    void nothingIsToldOnceTheDragHasEnded() throws InterruptedException {
        trial.ask(HERE, List.of());
        awaitWork();
        trial.end();
        answer();

        assertThat(told).isEmpty();
    }

    /** Runs the next thing that is to be done in the user interface. */
    private void answer() throws InterruptedException {
        display.take().run();
    }

    private static void awaitWork() throws InterruptedException {
        while (!Job.getJobManager().isIdle()) {
            TimeUnit.MILLISECONDS.sleep(1);
        }
    }
}
