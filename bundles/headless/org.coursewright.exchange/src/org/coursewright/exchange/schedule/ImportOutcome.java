package org.coursewright.exchange.schedule;

import java.util.List;
import java.util.Objects;

import org.coursewright.exchange.remark.Remark;
import org.coursewright.model.project.Project;

/** What became of schedules. */
public sealed interface ImportOutcome {

    /** @return what the person should know although it stopped nothing */
    List<Remark> warnings();

    /**
     * They make a project.
     *
     * @param project the project, in no file yet; its elements have their ids
     * @param warnings what the person should know
     */
    record Imported(Project project, List<Remark> warnings) implements ImportOutcome {
        public Imported {
            Objects.requireNonNull(project, "project");
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * Something is wrong with them.
     *
     * @param errors everything that was found wrong, at least one
     * @param warnings what the person should know besides
     */
    record Refused(List<Remark> errors, List<Remark> warnings) implements ImportOutcome {
        public Refused {
            errors = List.copyOf(errors);
            warnings = List.copyOf(warnings);
        }
    }
}
