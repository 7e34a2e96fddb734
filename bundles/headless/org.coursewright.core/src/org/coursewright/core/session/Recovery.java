package org.coursewright.core.session;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * What became of edits that an earlier session left behind when it was ended by force.
 *
 * @param outcome what was done with them
 * @param editedAt when the last of them was made, empty if the journal is damaged
 * @param keptAs where they were put aside, empty if they are in the project now
 * @param message the same in words, with what to do
 */
public record Recovery(Outcome outcome, Optional<Instant> editedAt, Optional<Path> keptAs, String message) {

    /** What was done with edits that were left behind. */
    public enum Outcome {
        /** They are in the project again and not saved yet. */
        REPLAYED,
        /** The project file was changed since by other means, so they are in a project file of their own. */
        KEPT_ASIDE,
        /** The journal is damaged; it was put aside as it is. */
        DAMAGED
    }

    static Recovery replayed(Instant editedAt) {
        return new Recovery(Outcome.REPLAYED, Optional.of(editedAt), Optional.empty(),
                "Edits made until %s that were not saved have been recovered. Save to keep them.".formatted(editedAt));
    }

    static Recovery keptAside(Instant editedAt, Path where) {
        return new Recovery(Outcome.KEPT_ASIDE, Optional.of(editedAt), Optional.of(where),
                ("Edits made until %s were not saved, and the project file has been changed since. They are kept in "
                        + "%s: open it to compare, or delete it.").formatted(editedAt, where.getFileName()));
    }

    static Recovery damaged(Path where, String reason) {
        return new Recovery(Outcome.DAMAGED, Optional.empty(), Optional.of(where),
                ("Edits that were not saved cannot be recovered: %s The journal is kept as %s; the project is as last "
                        + "saved.").formatted(reason, where.getFileName()));
    }
}
