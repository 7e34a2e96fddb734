package org.coursewright.diagram.ui.history;

import java.util.Objects;

import org.eclipse.gef.commands.Command;

/**
 * An edit of the project, as the graphical framework asks for it. It only carries the edit to the
 * {@link SessionCommandStack}, which hands it to the session; undo and redo are the session's.
 */
public final class EditCommand extends Command {

    private final org.eclipse.emf.common.command.Command edit;

    /** @param edit of the project, not executed yet */
    public EditCommand(org.eclipse.emf.common.command.Command edit) {
        super(edit.getLabel());
        this.edit = Objects.requireNonNull(edit, "edit");
    }

    /** @return the edit that is carried */
    public org.eclipse.emf.common.command.Command edit() {
        return edit;
    }

    @Override
    public boolean canExecute() {
        return edit.canExecute();
    }

    /** @throws UnsupportedOperationException always: only the session executes an edit */
    @Override
    public void execute() {
        throw new UnsupportedOperationException("Edits are executed by the session of their project.");
    }
}
