package org.coursewright.core.derive;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import org.coursewright.model.project.Project;

/**
 * What was read of a project at one moment.
 *
 * @param reads the state of each read, fresh or failed
 */
record Snapshot(Map<ModelRead<?>, NodeState<?>> reads) {

    static final Snapshot EMPTY = new Snapshot(Map.of());

    /** Reads everything that the results need, directly or not; on the editing thread. */
    static Snapshot of(Project project, Collection<? extends Derived<?>> results) {
        Set<ModelRead<?>> needed = new HashSet<>();
        results.forEach(each -> addReads(each, needed));
        Map<ModelRead<?>, NodeState<?>> states = new HashMap<>();
        needed.forEach(read -> states.put(read, read(read, project)));
        return new Snapshot(Map.copyOf(states));
    }

    static void addReads(Source<?> source, Set<ModelRead<?>> into) {
        if (source instanceof ModelRead<?> read) {
            into.add(read);
        } else if (source instanceof Derived<?> derived) {
            derived.inputs().forEach(each -> addReads(each, into));
        }
    }

    private static NodeState<?> read(ModelRead<?> read, Project project) {
        try {
            return new NodeState.Fresh<>(read.reader().apply(project));
        } catch (RuntimeException e) {
            // a project that cannot be read this way has no results that need it, but may have others
            return new NodeState.Failed<>(e.getMessage() == null ? e.toString() : e.getMessage());
        }
    }

    /** @return whether the two differ in something that the source depends on */
    boolean differsFor(Source<?> source, Snapshot other) {
        Set<ModelRead<?>> needed = new HashSet<>();
        addReads(source, needed);
        return needed.stream()
                .anyMatch(read -> reads.get(read) == null || !reads.get(read).equals(other.reads.get(read)));
    }
}
