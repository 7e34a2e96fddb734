package org.coursewright.core.derive;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Results that somebody listens to, as in a workbench. */
class BackgroundDerivationTest {

    private static final long PATIENCE_SECONDS = 30;

    private final Project project = ProjectFactory.eINSTANCE.createProject();
    private final BlockingQueue<NodeState<Integer>> told = new LinkedBlockingQueue<>();
    private final AtomicInteger computed = new AtomicInteger();
    private final ModelRead<Integer> denominator = new ModelRead<>("denominator", Integer.class,
            Project::getInchDenominator);

    private Derived<Integer> square() {
        return Derived.of("square", Integer.class, denominator, (value, progress) -> {
            computed.incrementAndGet();
            return value * value;
        });
    }

    private DerivationGraph graph(int threads, Duration pause) {
        return new DerivationGraph(project, threads, pause);
    }

    private NodeState<Integer> next() throws InterruptedException {
        return told.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
    }

    private void edit(DerivationGraph graph, int value) {
        project.setInchDenominator(value);
        graph.modelChanged();
    }

    @Test
    void listenerIsToldOncePerSettledNode() throws InterruptedException {
        DerivationGraph graph = graph(2, Duration.ZERO);
        graph.listen(square(), Runnable::run, told::add);
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(256));
        edit(graph, 3);
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(9));
        project.setName("changes nothing that is read");
        graph.modelChanged();
        edit(graph, 4);
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(16));
        graph.close();
        assertThat(told).isEmpty();
        assertThat(computed).hasValue(3);
    }

    @Test
    void whatWasAskedForFirstIsThereFirst() throws InterruptedException {
        DerivationGraph graph = graph(1, Duration.ofMillis(50));
        Derived<Integer> shared = square();
        for (int i = 0; i < 5; i++) {
            int plus = i;
            graph.listen(Derived.of("sum " + i, Integer.class, shared, (value, progress) -> value + plus),
                    Runnable::run, told::add);
        }
        for (int i = 0; i < 5; i++) {
            assertThat(next()).isEqualTo(new NodeState.Fresh<>(256 + i));
        }
        graph.close();
    }

    @Test
    void quickEditsAreComputedOnce() throws InterruptedException {
        DerivationGraph graph = graph(1, Duration.ofMillis(500));
        graph.listen(square(), Runnable::run, told::add);
        for (int i = 1; i <= 50; i++) {
            edit(graph, i);
        }
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(2500));
        graph.close();
        assertThat(told).isEmpty();
        assertThat(computed).hasValue(1);
    }

    @Test
    void overtakenRunIsCancelledWithoutATrace() throws InterruptedException {
        CountDownLatch started = new CountDownLatch(1);
        AtomicReference<String> seen = new AtomicReference<>("");
        Derived<Integer> patient = Derived.of("patient", Integer.class, denominator, (value, progress) -> {
            if (value == 16) {
                started.countDown();
                while (!progress.isCancelled()) {
                    Thread.onSpinWait();
                }
                seen.set("cancelled");
                return -1;
            }
            return value;
        });
        DerivationGraph graph = graph(1, Duration.ZERO);
        graph.listen(patient, Runnable::run, told::add);
        assertThat(started.await(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
        edit(graph, 5);
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(5));
        assertThat(graph.state(patient)).isEqualTo(new NodeState.Fresh<>(5));
        graph.close();
        assertThat(seen).hasValue("cancelled");
        assertThat(told).isEmpty();
    }

    @Test
    void runThatNobodyWaitsForAnyMoreIsCancelled() throws InterruptedException {
        CountDownLatch started = new CountDownLatch(1);
        CountDownLatch cancelled = new CountDownLatch(1);
        Derived<Integer> endless = Derived.of("endless", Integer.class, denominator, (value, progress) -> {
            started.countDown();
            while (!progress.isCancelled()) {
                Thread.onSpinWait();
            }
            cancelled.countDown();
            return value;
        });
        DerivationGraph graph = graph(1, Duration.ZERO);
        DerivationGraph.Listening listening = graph.listen(endless, Runnable::run, told::add);
        assertThat(started.await(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
        listening.end();
        assertThat(cancelled.await(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
        assertThat(graph.state(endless)).isInstanceOf(NodeState.Stale.class);
        graph.close();
        assertThat(told).isEmpty();
    }

    @Test
    void editThatIsTakenBackLeavesTheResultFresh() throws InterruptedException {
        Derived<Integer> square = Derived.of("square", Integer.class, denominator, (value, progress) -> {
            while (value == 3 && !progress.isCancelled()) {
                Thread.onSpinWait();
            }
            return value * value;
        });
        DerivationGraph graph = graph(1, Duration.ZERO);
        graph.listen(square, Runnable::run, told::add);
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(256));
        edit(graph, 3);
        graph.state(square);
        edit(graph, 16);
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(256));
        assertThat(graph.state(square)).isEqualTo(new NodeState.Fresh<>(256));
        graph.close();
    }

    @Test
    void askingAgainDoesNotPutOffTheRun() throws InterruptedException {
        DerivationGraph graph = graph(1, Duration.ofMillis(400));
        graph.listen(square(), Runnable::run, told::add);
        NodeState<Integer> settled = null;
        for (int i = 0; i < 100 && settled == null; i++) {
            graph.modelChanged();
            settled = told.poll(50, TimeUnit.MILLISECONDS);
        }
        graph.close();
        assertThat(settled).isEqualTo(new NodeState.Fresh<>(256));
    }

    @Test
    void editThatARunDoesNotReadLetsItGoOn() throws InterruptedException {
        CountDownLatch started = new CountDownLatch(1);
        CountDownLatch edited = new CountDownLatch(1);
        Derived<Integer> slow = Derived.of("slow", Integer.class, denominator, (value, progress) -> {
            computed.incrementAndGet();
            started.countDown();
            try {
                edited.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            return value;
        });
        DerivationGraph graph = graph(1, Duration.ZERO);
        graph.listen(slow, Runnable::run, told::add);
        assertThat(started.await(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
        project.setName("other");
        graph.modelChanged();
        edited.countDown();
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(16));
        graph.close();
        assertThat(computed).hasValue(1);
    }

    @Test
    void pullSettlesWhatABackgroundRunWouldHave() throws InterruptedException {
        Derived<Integer> square = square();
        DerivationGraph graph = graph(1, Duration.ofMillis(300));
        graph.listen(square, Runnable::run, told::add);
        assertThat(graph.get(square)).isEqualTo(256);
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(256));
        assertThat(told.poll(600, TimeUnit.MILLISECONDS)).isNull();
        graph.close();
        assertThat(computed).hasValue(1);
    }

    @Test
    void lateListenerIsToldWhatIsKnown() throws InterruptedException {
        Derived<Integer> square = square();
        DerivationGraph graph = graph(1, Duration.ZERO);
        graph.get(square);
        graph.listen(square, Runnable::run, told::add);
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(256));
        graph.close();
        assertThat(computed).hasValue(1);
    }

    @Test
    void nobodyListeningMeansNothingIsComputed() throws InterruptedException {
        DerivationGraph graph = graph(1, Duration.ZERO);
        Derived<Integer> square = square();
        DerivationGraph.Listening listening = graph.listen(square, Runnable::run, told::add);
        next();
        listening.end();
        edit(graph, 3);
        assertThat(told.poll(200, TimeUnit.MILLISECONDS)).isNull();
        assertThat(graph.state(square)).isInstanceOf(NodeState.Stale.class);
        graph.close();
        assertThat(computed).hasValue(1);
    }

    @Test
    void failureIsToldAndMended() throws InterruptedException {
        Derived<Integer> picky = Derived.of("picky", Integer.class, denominator, (value, progress) -> {
            if (value < 0) {
                throw new IllegalArgumentException("Too small.");
            }
            return value;
        });
        DerivationGraph graph = graph(1, Duration.ZERO);
        project.setInchDenominator(-1);
        graph.listen(picky, Runnable::run, told::add);
        assertThat(next()).isEqualTo(new NodeState.Failed<>("Too small."));
        edit(graph, 2);
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(2));
        graph.close();
    }

    @Test
    void projectIsReadOnTheEditingThreadOnly() throws InterruptedException {
        Map<Thread, Boolean> readers = new ConcurrentHashMap<>();
        ModelRead<Integer> watched = new ModelRead<>("watched", Integer.class, p -> {
            readers.put(Thread.currentThread(), true);
            return p.getInchDenominator();
        });
        AtomicReference<Thread> computer = new AtomicReference<>();
        Derived<Integer> result = Derived.of("result", Integer.class, watched, (value, progress) -> {
            computer.set(Thread.currentThread());
            return value;
        });
        DerivationGraph graph = graph(2, Duration.ZERO);
        graph.listen(result, Runnable::run, told::add);
        next();
        edit(graph, 8);
        next();
        graph.close();
        assertThat(readers).containsOnlyKeys(Thread.currentThread());
        assertThat(computer.get()).isNotSameAs(Thread.currentThread());
    }

    /** A lattice of sums whose value is known: each layer adds its two neighbours below, so row sums are powers of 2. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7})
    void resultDoesNotDependOnTheNumberOfThreads(int threads) throws InterruptedException {
        int layers = 12;
        List<Source<Integer>> layer = new ArrayList<>();
        layer.add(denominator);
        for (int depth = 0; depth < layers; depth++) {
            layer = above(layer);
        }
        List<Source<?>> top = List.copyOf(layer);
        Derived<Integer> total = Derived.of("total", Integer.class, top, (inputs, progress) -> top.stream()
                .mapToInt(each -> (Integer) inputs.of(each)).sum());
        DerivationGraph graph = graph(threads, Duration.ZERO);
        graph.listen(total, Runnable::run, told::add);
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(16 << layers));
        edit(graph, 3);
        assertThat(next()).isEqualTo(new NodeState.Fresh<>(3 << layers));
        graph.close();
        assertThat(told).isEmpty();
        assertThat(computed).as("each sum of the lattice once for each edit").hasValue(2 * layers * (layers + 3) / 2);
    }

    private List<Source<Integer>> above(List<Source<Integer>> below) {
        List<Source<Integer>> layer = new ArrayList<>();
        for (int i = 0; i <= below.size(); i++) {
            List<Source<?>> parts = new ArrayList<>(below.subList(Math.max(0, i - 1), Math.min(below.size(), i + 1)));
            layer.add(Derived.of("sum", Integer.class, parts, (inputs, progress) -> {
                computed.incrementAndGet();
                return parts.stream().mapToInt(each -> (Integer) inputs.of(each)).sum();
            }));
        }
        return layer;
    }
}
