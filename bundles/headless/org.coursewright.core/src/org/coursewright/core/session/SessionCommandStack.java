package org.coursewright.core.session;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;

/** The history of a session: tells each step after it was made, and lets failures through to the caller. */
final class SessionCommandStack extends BasicCommandStack {

    private final BiConsumer<SessionEvent.Kind, Command> afterStep;

    SessionCommandStack(BiConsumer<SessionEvent.Kind, Command> afterStep) {
        this.afterStep = afterStep;
    }

    @Override
    public void execute(Command command) {
        boolean executable = command != null && command.canExecute();
        super.execute(command);
        if (executable) {
            afterStep.accept(SessionEvent.Kind.EDITED, command);
        }
    }

    @Override
    public void undo() {
        if (canUndo()) {
            Command command = getUndoCommand();
            super.undo();
            afterStep.accept(SessionEvent.Kind.UNDONE, command);
        }
    }

    @Override
    public void redo() {
        if (canRedo()) {
            Command command = getRedoCommand();
            super.redo();
            afterStep.accept(SessionEvent.Kind.REDONE, command);
        }
    }

    /** @return the edits made so far, those that are taken back too */
    SessionHistory history() {
        return new SessionHistory(commandList.stream().map(Command::getLabel).toList(), top + 1,
                saveIndex < -1 ? OptionalInt.empty() : OptionalInt.of(saveIndex + 1));
    }

    /** @return what {@link #undo()} would take back, in words */
    Optional<String> undoLabel() {
        return Optional.ofNullable(getUndoCommand()).map(Command::getLabel);
    }

    /** @return what {@link #redo()} would make again, in words */
    Optional<String> redoLabel() {
        return Optional.ofNullable(getRedoCommand()).map(Command::getLabel);
    }

    /**
     * Takes edits back, or makes them again, until so many are in effect.
     *
     * @throws IllegalArgumentException if there are fewer edits
     */
    void goTo(int position) {
        if (position < 0 || position > commandList.size()) {
            throw new IllegalArgumentException("There is no step %d; there are %d.".formatted(position,
                    commandList.size()));
        }
        while (top + 1 > position) {
            undo();
        }
        while (top + 1 < position) {
            redo();
        }
    }

    /** Instead of writing it to a log and going on. */
    @Override
    protected void handleError(Exception exception) {
        if (exception instanceof RuntimeException failure) {
            throw failure;
        }
        throw new IllegalStateException(exception);
    }
}
