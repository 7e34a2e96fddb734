package org.coursewright.workbench.internal.safety;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.internal.preference.Preferences;
import org.coursewright.workbench.notice.Notice;
import org.coursewright.workbench.notice.Notice.Weight;
import org.coursewright.workbench.notice.Notices;
import org.eclipse.osgi.util.NLS;

/**
 * Saves a project by itself some minutes after the first edit that is not saved, if the preferences say so. It saves as a
 * person would, so the file is replaced as a whole and undo goes on. What was recovered after a crash is not saved before
 * somebody edits it: they are asked to look at it first.
 */
public final class Autosave implements OpenProjectsListener {

    private static final int MILLISECONDS_PER_MINUTE = 60_000;

    private final OpenProjects projects;
    private final Preferences preferences;
    private final Notices notices;
    private final BiConsumer<Integer, Runnable> timer;
    private final Map<ProjectSession, Runnable> waiting = new HashMap<>();

    /**
     * @param projects to save
     * @param preferences whether, and after how many minutes
     * @param notices where it is said that a project cannot be saved
     * @param timer runs something in the user interface thread after so many milliseconds
     */
    public Autosave(OpenProjects projects, Preferences preferences, Notices notices,
            BiConsumer<Integer, Runnable> timer) {
        this.projects = projects;
        this.preferences = preferences;
        this.notices = notices;
        this.timer = timer;
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        if (change == Change.CLOSED || !session.isDirty()) {
            waiting.remove(session);
        } else if (change == Change.EDITED && !waiting.containsKey(session)) {
            preferences.autosaveMinutes().ifPresent(minutes -> schedule(session, minutes));
        }
    }

    private void schedule(ProjectSession session, int minutes) {
        Runnable save = new Runnable() {
            @Override
            public void run() {
                // another one waits by now, or nothing is to be saved any more
                if (waiting.remove(session, this)) {
                    saveIfStillWanted(session);
                }
            }
        };
        waiting.put(session, save);
        timer.accept(minutes * MILLISECONDS_PER_MINUTE, save);
    }

    private void saveIfStillWanted(ProjectSession session) {
        Optional<Integer> wanted = preferences.autosaveMinutes();
        if (wanted.isEmpty() || !projects.sessions().contains(session)) {
            return;
        }
        try {
            session.save();
        } catch (ProjectFileException e) {
            notices.tell(new Notice(session, Weight.ERROR,
                    NLS.bind(SafetyText.notSaved, e.getMessage()), true));
        }
    }
}
