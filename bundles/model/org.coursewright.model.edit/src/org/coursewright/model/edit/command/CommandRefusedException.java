package org.coursewright.model.edit.command;

import org.coursewright.model.edit.Refusal;

/** Says that an edit was asked for that cannot be made, and why. */
public final class CommandRefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** @param refusal why the edit cannot be made */
    public CommandRefusedException(Refusal refusal) {
        super(refusal.reason());
    }
}
