package org.coursewright.core.derive;

import java.util.Optional;

/**
 * How far a derived result is.
 *
 * @param <T> type of the result
 */
public sealed interface NodeState<T> {

    /** @return the result, empty unless it is up to date */
    default Optional<T> value() {
        return Optional.empty();
    }

    /**
     * It is up to date.
     *
     * @param result the result, not null
     * @param <T> type of the result
     */
    record Fresh<T>(T result) implements NodeState<T> {
        @Override
        public Optional<T> value() {
            return Optional.of(result);
        }
    }

    /**
     * The project changed since, or it was never computed.
     *
     * @param last the last result there was, to be shown meanwhile
     * @param <T> type of the result
     */
    record Stale<T>(Optional<T> last) implements NodeState<T> {
    }

    /**
     * It is up to date in that there is no result for the project as it is.
     *
     * @param reason why, a sentence for people
     * @param <T> type of the result
     */
    record Failed<T>(String reason) implements NodeState<T> {
    }
}
