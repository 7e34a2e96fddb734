package org.coursewright.core.derive;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

import org.coursewright.model.project.Project;

/**
 * What was read of a project. A part is read when it is first asked for, and again only after the project has changed.
 * To be used on the editing thread only; what it gives may be used on any.
 */
final class ProjectReads {

    private final Project project;
    private final ChangeCount count = new ChangeCount();
    private final Map<ModelRead<?>, Entry> entries = new HashMap<>();

    /** @param project read from; followed until {@link #end} */
    ProjectReads(Project project) {
        this.project = project;
        project.eAdapters().add(count);
    }

    /** What was read after so many changes. */
    private record Entry(long changes, NodeState<?> state) {
    }

    /** @return the state of each read for the project as it is, fresh or failed */
    Map<ModelRead<?>, NodeState<?>> of(Set<ModelRead<?>> reads) {
        Map<ModelRead<?>, NodeState<?>> states = new HashMap<>();
        reads.forEach(each -> states.put(each, of(each)));
        return states;
    }

    private NodeState<?> of(ModelRead<?> read) {
        Entry last = entries.get(read);
        if (last != null && last.changes() == count.changes()) {
            return last.state();
        }
        NodeState<?> now = read(read);
        // what is equal stays the same object, so that comparing it with what was computed from it costs nothing
        NodeState<?> kept = last != null && last.state().equals(now) ? last.state() : now;
        entries.put(read, new Entry(count.changes(), kept));
        return kept;
    }

    private NodeState<?> read(ModelRead<?> read) {
        try {
            return new NodeState.Fresh<>(read.reader().apply(project));
        } catch (RuntimeException e) {
            // a project that cannot be read this way has no results that need it, but may have others
            return new NodeState.Failed<>(e.getMessage() == null ? e.toString() : e.getMessage());
        }
    }

    /** Ends following the project. */
    void end() {
        project.eAdapters().remove(count);
    }
}
