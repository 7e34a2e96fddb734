package org.coursewright.workbench.internal.project;

import java.util.Optional;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.actions.ActionFactory;

/** Makes again the edit of the active project that was taken back last, and names it. */
final class RedoAction extends SessionAction {

    RedoAction(OpenProjects projects) {
        super(projects, ActionFactory.REDO);
        update();
    }

    @Override
    void update() {
        Optional<String> what = projects().active().flatMap(ProjectSession::redoLabel);
        setText(what.map(label -> NLS.bind(ProjectText.redoWhat, label)).orElse(ProjectText.redo));
        setEnabled(projects().active().filter(ProjectSession::canRedo).isPresent());
    }

    @Override
    public void run() {
        projects().active().filter(ProjectSession::canRedo).ifPresent(ProjectSession::redo);
    }
}
