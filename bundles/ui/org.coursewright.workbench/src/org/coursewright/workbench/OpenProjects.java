package org.coursewright.workbench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.session.SessionEvent;
import org.coursewright.core.session.SessionListener;
import org.coursewright.workbench.OpenProjectsListener.Change;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * The projects that are open in this workbench, each once, in the order in which they were opened.
 * <p>
 * A part gets it from its site: {@code getSite().getService(OpenProjects.class)}. To be used in the user interface
 * thread only.
 */
public final class OpenProjects {

    private final List<ProjectSession> sessions = new ArrayList<>();
    private final List<OpenProjectsListener> listeners = new CopyOnWriteArrayList<>();
    private final SessionListener sessionListener = event -> tell(
            event.kind() == SessionEvent.Kind.JOURNAL_FAILED ? Change.JOURNAL_FAILED : Change.EDITED,
            event.session());
    private ProjectSession active;

    /** @return the open projects, oldest first */
    public List<ProjectSession> sessions() {
        return List.copyOf(sessions);
    }

    /**
     * Opens a project and makes it the active one. A project that is open already is only made active.
     *
     * @param file project file
     * @throws ProjectFileException if it cannot be read, or if somebody else has it open
     */
    public void open(Path file) throws ProjectFileException {
        Path place = file.toAbsolutePath().normalize();
        if (openAt(place).isPresent()) {
            openAt(place).ifPresent(this::activate);
        } else {
            active = ProjectSession.open(place);
            add(active);
            tell(Change.ACTIVATED, active);
        }
    }

    private Optional<ProjectSession> openAt(Path file) {
        return sessions.stream().filter(session -> session.file().equals(file)).findFirst();
    }

    private void add(ProjectSession session) {
        sessions.add(session);
        session.addListener(sessionListener);
        tell(Change.OPENED, session);
    }

    /**
     * Closes a project without asking; what is not saved is lost.
     *
     * @param session to be closed; of no effect if it is not open here
     */
    public void close(ProjectSession session) {
        if (!sessions.remove(session)) {
            return;
        }
        session.removeListener(sessionListener);
        boolean wasActive = session == active;
        active = wasActive ? null : active;
        tell(Change.CLOSED, session);
        session.close();
        if (wasActive) {
            sessions.stream().findFirst().ifPresent(this::activate);
        }
    }

    /** Closes every project without asking. */
    public void closeAll() {
        sessions().forEach(this::close);
    }

    /** @return the project that undo, redo and save work on, empty if none is open */
    public Optional<ProjectSession> active() {
        return Optional.ofNullable(active);
    }

    /** @param session open project that undo, redo and save are to work on from now on */
    public void activate(ProjectSession session) {
        if (sessions.contains(session) && session != active) {
            active = session;
            tell(Change.ACTIVATED, session);
        }
    }

    /**
     * Finds the project that an element belongs to.
     *
     * @param element part of a model
     * @return its session, empty if its project is not open or if it has been deleted
     */
    public Optional<ProjectSession> sessionOf(EObject element) {
        EObject root = EcoreUtil.getRootContainer(element);
        return sessions.stream().filter(session -> session.project().equals(root)).findFirst();
    }

    /** @param listener to be told from now on; of no effect if it is told already */
    public void addListener(OpenProjectsListener listener) {
        if (!listeners.contains(listener)) {
            listeners.add(listener);
        }
    }

    /** @param listener not to be told any more */
    public void removeListener(OpenProjectsListener listener) {
        listeners.remove(listener);
    }

    private void tell(Change change, ProjectSession session) {
        listeners.forEach(listener -> listener.projectChanged(change, session));
    }
}
