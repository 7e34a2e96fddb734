package org.coursewright.core.derive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;

import org.coursewright.measure.Progress;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Pulling results, as headless callers do. */
class DerivationGraphTest {

    private final Project project = ProjectFactory.eINSTANCE.createProject();
    private final DerivationGraph graph = new DerivationGraph(project, 1, Duration.ZERO);
    private final AtomicInteger computed = new AtomicInteger();

    private final ModelRead<String> name = new ModelRead<>("name", String.class, p -> p.getName().strip());
    private final ModelRead<Integer> denominator = new ModelRead<>("denominator", Integer.class,
            Project::getInchDenominator);
    private final Derived<Integer> length = Derived.of("length of the name", Integer.class, name,
            (text, progress) -> counted(text.length()));

    DerivationGraphTest() {
        project.setName("clinic");
    }

    @AfterEach
    void close() {
        graph.close();
    }

    private <T> T counted(T value) {
        computed.incrementAndGet();
        return value;
    }

    @Test
    void resultIsComputedOnceForTheSameInputs() {
        assertThat(graph.get(length)).isEqualTo(6);
        assertThat(graph.get(length)).isEqualTo(6);
        assertThat(computed).hasValue(1);
    }

    @Test
    void changedInputIsComputedAgainWithoutBeingTold() {
        graph.get(length);
        project.setName("school house");
        assertThat(graph.get(length)).isEqualTo(12);
        assertThat(computed).hasValue(2);
    }

    @Test
    void changeThatTheReadDoesNotSeeStopsTheWave() {
        graph.get(length);
        project.setName(" clinic ");
        project.setInchDenominator(8);
        graph.get(length);
        assertThat(computed).hasValue(1);
    }

    @Test
    void unchangedResultStopsTheWave() {
        Derived<Boolean> isLong = Derived.of("is long", Boolean.class, length,
                (size, progress) -> counted(size > 10));
        assertThat(graph.get(isLong)).isFalse();
        project.setName("schools");
        project.setName("garage");
        assertThat(graph.get(isLong)).isFalse();
        assertThat(computed).as("length twice, is long once").hasValue(3);
    }

    @Test
    void diamondIsComputedOnceEach() {
        Derived<Integer> twice = Derived.of("twice", Integer.class, length, (size, progress) -> counted(2 * size));
        Derived<Integer> thrice = Derived.of("thrice", Integer.class, length, (size, progress) -> counted(3 * size));
        Derived<Integer> sum = Derived.of("sum", Integer.class, List.of(twice, thrice, denominator),
                (inputs, progress) -> counted(inputs.of(twice) + inputs.of(thrice) + inputs.of(denominator)));
        assertThat(graph.get(sum)).isEqualTo(6 * 5 + 16);
        assertThat(computed).hasValue(4);
        project.setName("schools");
        assertThat(graph.get(sum)).isEqualTo(7 * 5 + 16);
        assertThat(computed).hasValue(8);
        project.setInchDenominator(8);
        assertThat(graph.get(sum)).isEqualTo(7 * 5 + 8);
        assertThat(computed).hasValue(9);
    }

    @Test
    void undeclaredInputIsRefused() {
        Derived<Integer> peeking = Derived.of("peeking", Integer.class, List.of(name),
                (inputs, progress) -> inputs.of(denominator));
        assertThatThrownBy(() -> graph.get(peeking)).isInstanceOf(DerivationException.class)
                .hasMessageContaining("\"denominator\" is not declared");
    }

    @Test
    void failureIsAStateThatReachesWhatDependsOnIt() {
        Derived<Integer> failing = Derived.of("broken", Integer.class, name, (text, progress) -> {
            throw new IllegalArgumentException("Wall W1 has no unit.");
        });
        Derived<Integer> next = Derived.of("next", Integer.class, failing, (value, progress) -> counted(value));
        assertThatThrownBy(() -> graph.get(next)).isInstanceOf(DerivationException.class)
                .hasMessage("There is no next: Wall W1 has no unit.");
        assertThat(graph.state(failing)).isEqualTo(new NodeState.Failed<>("Wall W1 has no unit."));
        assertThat(graph.state(next)).isEqualTo(new NodeState.Failed<>("Wall W1 has no unit."));
        assertThat(computed).hasValue(0);
    }

    @Test
    void unreadableProjectFailsOnlyWhatReadsIt() {
        project.setName(null);
        assertThatThrownBy(() -> graph.get(length)).isInstanceOf(DerivationException.class);
        assertThat(graph.get(Derived.of("sum", Integer.class, denominator, (value, progress) -> value))).isEqualTo(16);
        project.setName("mended");
        assertThat(graph.get(length)).isEqualTo(6);
    }

    @Test
    void missingResultIsAFailure() {
        Derived<Integer> nothing = Derived.of("nothing", Integer.class, name, (text, progress) -> null);
        assertThatThrownBy(() -> graph.get(nothing)).isInstanceOf(DerivationException.class);
    }

    @Test
    void stateTellsHowFarAResultIs() {
        assertThat(graph.state(length)).isEqualTo(new NodeState.Stale<>(Optional.empty()));
        graph.get(length);
        assertThat(graph.state(length)).isEqualTo(new NodeState.Fresh<>(6));
        project.setName("school");
        graph.modelChanged();
        assertThat(graph.state(length)).isEqualTo(new NodeState.Stale<>(Optional.of(6)));
        project.setInchDenominator(8);
        graph.get(length);
        graph.modelChanged();
        assertThat(graph.state(length)).isEqualTo(new NodeState.Fresh<>(6));
    }

    @Test
    void projectIsReadOnceAfterAnEdit() {
        AtomicInteger read = new AtomicInteger();
        ModelRead<String> counted = new ModelRead<>("counted", String.class, p -> p.getName() + read.incrementAndGet());
        Derived<Integer> first = Derived.of("first", Integer.class, counted, (text, progress) -> text.length());
        Derived<Integer> second = Derived.of("second", Integer.class, List.of(counted, first),
                (inputs, progress) -> inputs.of(first));
        graph.get(first);
        graph.get(second);
        graph.modelChanged();
        graph.state(second);
        assertThat(read).hasValue(1);
        project.setName("school");
        graph.modelChanged();
        graph.get(second);
        graph.get(first);
        assertThat(read).hasValue(2);
    }

    @Test
    void editOfAnElementDeepInTheProjectIsAnEdit() {
        project.setBuilding(BuildingFactory.eINSTANCE.createBuilding());
        Derived<Integer> storeys = Derived.of("storeys", Integer.class, new ModelRead<>("storeys", Integer.class,
                p -> p.getBuilding().getStoreys().size()), (size, progress) -> size);
        assertThat(graph.get(storeys)).isZero();
        project.getBuilding().getStoreys().add(BuildingFactory.eINSTANCE.createStorey());
        assertThat(graph.get(storeys)).isOne();
    }

    @Test
    void resultThatNobodyAsksForAgainIsNotReadAgain() {
        AtomicInteger read = new AtomicInteger();
        Derived<Integer> forgotten = Derived.of("forgotten", Integer.class, new ModelRead<>("counted", Integer.class,
                p -> read.incrementAndGet()), (value, progress) -> value);
        graph.get(forgotten);
        project.setName("school");
        graph.modelChanged();
        graph.get(length);
        assertThat(read).hasValue(1);
    }

    @Test
    void closedGraphFollowsTheProjectNoMore() {
        assertThat(project.eAdapters()).isNotEmpty();
        graph.close();
        assertThat(project.eAdapters()).isEmpty();
    }

    @Test
    void cancelledPullLeavesNoHalfResult() {
        AtomicInteger asked = new AtomicInteger();
        Progress impatient = new Progress() {
            @Override
            public void done(double fraction) {
                asked.incrementAndGet();
            }

            @Override
            public boolean isCancelled() {
                return asked.get() > 0;
            }
        };
        Derived<Integer> slow = Derived.of("slow", Integer.class, length, (size, progress) -> {
            progress.done(0.5);
            return counted(-1);
        });
        assertThatThrownBy(() -> graph.get(slow, impatient)).isInstanceOf(CancellationException.class);
        assertThat(graph.state(slow)).isEqualTo(new NodeState.Stale<>(Optional.empty()));
        assertThat(graph.state(length)).isEqualTo(new NodeState.Fresh<>(6));
    }
}
