package org.coursewright.core.derive;

import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;

import org.coursewright.measure.Progress;

/**
 * The declaration of a result that follows from the project: what it is called, what it is computed from, and how. It
 * holds no result itself; a {@link DerivationGraph} does. As its sources exist before it, there are no circles.
 *
 * <p>Two declarations are equal, and have one result in a graph, if they are made of equal parts: a result that is declared
 * as often as somebody asks for it, such as that of one scenario of many, has records for its reader and its computation.
 *
 * @param <T> type of the result: immutable, with an {@code equals} that compares content
 */
public final class Derived<T> implements Source<T> {

    private final String name;
    private final Class<T> type;
    private final List<Source<?>> inputs;
    private final Computation<T> computation;
    private final boolean ahead;
    private final int hash;

    private Derived(String name, Class<T> type, List<Source<?>> inputs, Computation<T> computation, boolean ahead) {
        this.name = Objects.requireNonNull(name, "name");
        this.type = Objects.requireNonNull(type, "type");
        this.inputs = List.copyOf(inputs);
        this.computation = Objects.requireNonNull(computation, "computation");
        this.ahead = ahead;
        this.hash = Objects.hash(name, type, this.inputs, computation, ahead);
    }

    /**
     * A result of any number of sources.
     *
     * @param name what it is called in messages
     * @param type of the result
     * @param inputs what it is computed from
     * @param computation how
     * @param <T> type of the result
     * @return the declaration
     */
    public static <T> Derived<T> of(String name, Class<T> type, List<Source<?>> inputs, Computation<T> computation) {
        return new Derived<>(name, type, inputs, computation, false);
    }

    /**
     * A result of one source.
     *
     * @param name what it is called in messages
     * @param type of the result
     * @param input what it is computed from
     * @param function how, by the rules of {@link Computation}
     * @param <A> type of the source
     * @param <T> type of the result
     * @return the declaration
     */
    public static <A, T> Derived<T> of(String name, Class<T> type, Source<A> input,
            BiFunction<A, Progress, T> function) {
        return new Derived<>(name, type, List.of(input),
                (inputs, progress) -> function.apply(inputs.of(input), progress), false);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Class<T> type() {
        return type;
    }

    /** @return what it is computed from, in the order of declaration */
    public List<Source<?>> inputs() {
        return inputs;
    }

    /** @return the same, to be computed ahead of others in the background, as what somebody waits for and is soon done */
    public Derived<T> ahead() {
        return new Derived<>(name, type, inputs, computation, true);
    }

    boolean isAhead() {
        return ahead;
    }

    T compute(Inputs values, Progress progress) {
        return Objects.requireNonNull(computation.compute(values, progress), name);
    }

    /** @return a state that was kept for this result, as one of its type */
    NodeState<T> typed(NodeState<?> kept) {
        if (kept instanceof NodeState.Fresh<?> fresh) {
            return new NodeState.Fresh<>(type.cast(fresh.result()));
        }
        if (kept instanceof NodeState.Failed<?> failed) {
            return new NodeState.Failed<>(failed.reason());
        }
        return new NodeState.Stale<>(((NodeState.Stale<?>) kept).last().map(type::cast));
    }

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Derived<?> derived && hash == derived.hash
                && name.equals(derived.name) && type == derived.type && ahead == derived.ahead
                && inputs.equals(derived.inputs) && computation.equals(derived.computation);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public String toString() {
        return name;
    }
}
