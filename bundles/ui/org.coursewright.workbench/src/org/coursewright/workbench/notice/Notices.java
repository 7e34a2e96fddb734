package org.coursewright.workbench.notice;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;

/**
 * What the workbench has to say about the open projects; the navigator shows it.
 *
 * <p>A part gets it from its site: {@code getSite().getService(Notices.class)}. To be used in the user interface thread only.
 */
public final class Notices implements OpenProjectsListener {

    private final OpenProjects projects;
    private final Set<Notice> notices = new LinkedHashSet<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    /** @param projects that notices are about */
    public Notices(OpenProjects projects) {
        this.projects = projects;
        projects.addListener(this);
    }

    /** Says nothing any more. */
    public void dispose() {
        projects.removeListener(this);
    }

    /** @return what is to be seen, oldest first */
    public List<Notice> all() {
        return List.copyOf(notices);
    }

    /** @param notice to be shown; of no effect if the same is shown already */
    public void tell(Notice notice) {
        if (notices.add(notice)) {
            listeners.forEach(Runnable::run);
        }
    }

    /** @param notice that has been read */
    public void dismiss(Notice notice) {
        if (notices.remove(notice)) {
            listeners.forEach(Runnable::run);
        }
    }

    /** @param listener run each time there are other notices */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** @param listener not to be run any more */
    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        boolean saved = !session.isDirty();
        if (notices.removeIf(notice -> notice.session() == session
                && (change == Change.CLOSED || notice.untilSaved() && saved))) {
            listeners.forEach(Runnable::run);
        }
    }
}
