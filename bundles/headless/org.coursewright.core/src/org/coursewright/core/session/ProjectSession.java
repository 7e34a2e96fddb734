package org.coursewright.core.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CopyOnWriteArrayList;

import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.model.edit.command.CommandRefusedException;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.project.Project;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.emf.edit.provider.ReflectiveItemProviderAdapterFactory;

/**
 * One project that is open for editing: its model, its one history of edits, its file.
 *
 * <p>At most one session in the world has a project open. Every change goes through a command. Edits that are not saved
 * are kept in a journal beside the file, so that a process that is killed loses at most what was done in its last two
 * seconds; the next session on the file brings them back.
 *
 * <p>A session belongs to one thread at a time: everything that reads or edits the model is called on that thread.
 */
public final class ProjectSession implements AutoCloseable {

    private final Path file;
    private final SessionSettings settings;
    private final HeldProject held;
    private final ProjectDisk disk;
    private final Project project;
    private final Optional<Recovery> recovery;
    private final SessionCommandStack history = new SessionCommandStack(this::afterStep);
    private final EditingDomain editingDomain;
    private final DerivationGraph derived;
    private final List<SessionListener> listeners = new CopyOnWriteArrayList<>();

    private boolean recoveredUnsaved;
    private boolean closed;

    private ProjectSession(Path file, SessionSettings settings, HeldProject held) throws ProjectFileException {
        this.file = file;
        this.settings = settings;
        this.held = held;
        byte[] content = settings.store().readBytes(file);
        JournalReplay.Start start = new JournalReplay(file, held.files(), settings.store()).start(content);
        this.project = start.project();
        this.recovery = start.recovery();
        this.recoveredUnsaved = recovery.filter(r -> r.outcome() == Recovery.Outcome.REPLAYED).isPresent();
        this.editingDomain = new AdapterFactoryEditingDomain(new ReflectiveItemProviderAdapterFactory(), history,
                project.eResource().getResourceSet());
        this.derived = new DerivationGraph(project);
        this.disk = new ProjectDisk(file, held.files().journal(), settings, content);
    }

    /**
     * Opens a project for editing, and recovers edits that a killed session left behind.
     *
     * @param file an existing project file
     * @return the session, to be closed by the caller
     * @throws ProjectInUseException if another session, here or elsewhere, has it open
     * @throws ProjectFileException if it cannot be read or locked
     */
    public static ProjectSession open(Path file) throws ProjectFileException {
        return open(file, SessionSettings.STANDARD);
    }

    /**
     * As {@link #open(Path)}, with settings.
     *
     * @param file an existing project file
     * @param settings how the session works
     * @return the session, to be closed by the caller
     * @throws ProjectFileException if it cannot be read or locked
     */
    public static ProjectSession open(Path file, SessionSettings settings) throws ProjectFileException {
        HeldProject held = HeldProject.of(file);
        ProjectSession session = null;
        try {
            session = new ProjectSession(file, settings, held);
            return session;
        } finally {
            if (session == null) {
                held.release();
            }
        }
    }

    /**
     * Writes a project to a file, over another one if need be, unless that is open for editing.
     *
     * @param project to be written
     * @param file to make or to replace
     * @throws ProjectInUseException if a session has the file open
     * @throws ProjectFileException if it cannot be written; what was there before is then untouched
     */
    public static void replace(Project project, Path file) throws ProjectFileException {
        if (!Files.exists(file)) {
            SessionSettings.STANDARD.store().save(project, file);
            return;
        }
        HeldProject held = HeldProject.of(file);
        try {
            SessionSettings.STANDARD.store().save(project, file);
        } finally {
            held.release();
        }
    }

    /** @return the project file as the caller named it */
    public Path file() {
        return file;
    }

    /** @return the model, to be read freely and changed by {@link #execute(Command)} only */
    public Project project() {
        return project;
    }

    /** @return the editing domain, whose command stack is the session's history */
    public EditingDomain editingDomain() {
        return editingDomain;
    }

    /**
     * Makes an edit that can be undone. A command that would change nothing does nothing.
     *
     * @param command one of the commands of {@code org.coursewright.model.edit.command}, or composed of them
     * @throws CommandRefusedException if the command says that it cannot be made, and why
     */
    public void execute(Command command) {
        requireOpen();
        if (command instanceof ProjectCommand edit && edit.refusal().isPresent()) {
            throw new CommandRefusedException(edit.refusal().get());
        }
        history.execute(command);
    }

    /** @return whether there is an edit to undo */
    public boolean canUndo() {
        return history.canUndo();
    }

    /** @return whether there is an undone edit to make again */
    public boolean canRedo() {
        return history.canRedo();
    }

    /** Takes the last edit back; does nothing if there is none. */
    public void undo() {
        requireOpen();
        history.undo();
    }

    /** Makes the edit again that was undone last; does nothing if there is none. */
    public void redo() {
        requireOpen();
        history.redo();
    }

    /** @return what {@link #undo()} would take back, in words */
    public Optional<String> undoLabel() {
        return history.undoLabel();
    }

    /** @return what {@link #redo()} would make again, in words */
    public Optional<String> redoLabel() {
        return history.redoLabel();
    }

    /** @return all edits of the session, what is taken back too */
    public SessionHistory history() {
        SessionHistory made = history.history();
        return recoveredUnsaved ? new SessionHistory(made.steps(), made.position(), OptionalInt.empty()) : made;
    }

    /**
     * Takes edits back, or makes edits again that were taken back, until so many are in effect.
     *
     * @param position from 0 for none to the number of all {@link SessionHistory#steps() steps}
     * @throws IllegalArgumentException if there are fewer edits
     */
    public void goTo(int position) {
        requireOpen();
        history.goTo(position);
    }

    /** @return whether there is something to save */
    public boolean isDirty() {
        return recoveredUnsaved || history.isSaveNeeded();
    }

    /**
     * Writes the project to its file, which is replaced as a whole.
     *
     * @throws ProjectFileException if it cannot be written, or if another program has changed the file since; the file
     *         is then untouched and the session as dirty as before
     */
    public void save() throws ProjectFileException {
        requireOpen();
        disk.save(project);
        recoveredUnsaved = false;
        history.saveIsDone();
        tell(SessionEvent.Kind.SAVED, List.of());
    }

    /**
     * Writes the project as it is now to another file; the session stays with its own.
     *
     * @param copy to make or to replace
     * @throws ProjectFileException if it cannot be written
     */
    public void saveCopy(Path copy) throws ProjectFileException {
        requireOpen();
        settings.store().save(project, copy);
    }

    /** @return the results that follow from the project, brought up to date after each edit */
    public DerivationGraph derived() {
        return derived;
    }

    /** @return what became of edits that an earlier session left behind, if it did */
    public Optional<Recovery> recovery() {
        return recovery;
    }

    /** @param listener to be told from now on, in the order of adding */
    public void addListener(SessionListener listener) {
        listeners.add(listener);
    }

    /** @param listener to be told no longer */
    public void removeListener(SessionListener listener) {
        listeners.remove(listener);
    }

    /**
     * Hears at once, not only at the next edit, that edits could not be written to the recovery journal.
     *
     * @param listener run after each failed attempt in a thread of the journal's; it hands over to the session's thread
     *        and touches nothing else. It takes the place of an earlier one.
     */
    public void onJournalFailure(Runnable listener) {
        disk.onFailure(listener);
    }

    /** Ends the session. Edits that are not saved are gone, so ask the user before. Closing twice does nothing. */
    @Override
    public void close() {
        if (closed) {
            return;
        }
        closed = true;
        derived.close();
        try {
            disk.close();
        } finally {
            held.release();
        }
        tell(SessionEvent.Kind.CLOSED, List.of());
    }

    private void requireOpen() {
        if (closed) {
            throw new IllegalStateException("The session on %s is closed; open the file again.".formatted(file));
        }
    }

    private void afterStep(SessionEvent.Kind kind, Command command) {
        disk.keep(project);
        derived.modelChanged();
        tell(kind, command.getAffectedObjects().stream().filter(EObject.class::isInstance).map(EObject.class::cast)
                .toList());
        if (disk.hasFailed()) {
            tell(SessionEvent.Kind.JOURNAL_FAILED, List.of());
        }
    }

    private void tell(SessionEvent.Kind kind, List<EObject> affected) {
        SessionEvent event = new SessionEvent(this, kind, affected);
        listeners.forEach(listener -> listener.sessionChanged(event));
    }
}
