package org.coursewright.diagram.ui.history;

import java.util.Optional;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.session.SessionListener;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;

/**
 * The command stack of an editor that keeps nothing itself: commands, undo and redo go to the session, so that all
 * editors of a project, and its views, share one history.
 */
public final class SessionCommandStack extends CommandStack {

    private static final Object[] NONE = {};

    private final ProjectSession session;
    private final SessionListener sessionListener = event -> tellListeners();

    /** @param session that edits go to from now on, until this is disposed of */
    public SessionCommandStack(ProjectSession session) {
        this.session = session;
        session.addListener(sessionListener);
    }

    /**
     * Makes an edit; one that would change nothing does nothing.
     *
     * @param command an {@link EditCommand}, or several of them in a compound command
     * @throws org.coursewright.model.edit.command.CommandRefusedException if the edit says that it cannot be made
     */
    @Override
    public void execute(Command command) {
        if (command != null && command.canExecute()) {
            session.execute(EditsOf.command(command));
        }
    }

    @Override
    public boolean canUndo() {
        return session.canUndo();
    }

    @Override
    public boolean canRedo() {
        return session.canRedo();
    }

    @Override
    public void undo() {
        session.undo();
    }

    @Override
    public void redo() {
        session.redo();
    }

    /** @return a command with the label of what {@link #undo()} takes back, null if there is none */
    @Override
    public Command getUndoCommand() {
        return labelled(session.undoLabel());
    }

    /** @return a command with the label of what {@link #redo()} makes again, null if there is none */
    @Override
    public Command getRedoCommand() {
        return labelled(session.redoLabel());
    }

    private static Command labelled(Optional<String> label) {
        return label.map(HistoryStep::new).orElse(null);
    }

    @Override
    public boolean isDirty() {
        return session.isDirty();
    }

    /** Does nothing: the session knows when it was saved. */
    @Override
    public void markSaveLocation() {
        tellListeners();
    }

    /** Does nothing: the history outlives an editor. */
    @Override
    public void flush() {
        tellListeners();
    }

    @Override
    public Object[] getCommands() {
        return NONE;
    }

    /** Lets go of the session. */
    @Override
    public void dispose() {
        session.removeListener(sessionListener);
        super.dispose();
    }

    @SuppressWarnings("deprecation") // the framework's own editors and actions listen this way only
    private void tellListeners() {
        notifyListeners();
    }

    /** Something in the history, to be named and not to be executed. */
    private static final class HistoryStep extends Command {

        HistoryStep(String label) {
            super(label);
        }
    }
}
