package org.coursewright.core.derive;

import java.util.Objects;
import java.util.function.Function;

import org.coursewright.model.project.Project;

/**
 * What a derived result needs of the project, copied out of it on the editing thread. The copy is also the fingerprint:
 * as long as it is equal, nothing that follows from it is computed again.
 *
 * @param name what it is called in messages
 * @param type of the copy
 * @param reader copies a part of the project into an immutable value without references into the model; called on the
 *        editing thread, once after an edit if a result needs it that is wanted, so it must be quick
 * @param <T> type of the copy: immutable, with an {@code equals} that compares content; a record does
 */
public record ModelRead<T>(String name, Class<T> type,
        Function<? super Project, ? extends T> reader) implements Source<T> {

    public ModelRead {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(reader, "reader");
    }
}
