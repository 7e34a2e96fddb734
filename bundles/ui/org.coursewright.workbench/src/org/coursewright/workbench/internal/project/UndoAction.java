package org.coursewright.workbench.internal.project;

import java.util.Optional;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.actions.ActionFactory;

/** Takes back the last edit of the active project and names it. */
final class UndoAction extends SessionAction {

    UndoAction(OpenProjects projects) {
        super(projects, ActionFactory.UNDO);
        update();
    }

    @Override
    void update() {
        Optional<String> what = projects().active().flatMap(ProjectSession::undoLabel);
        setText(what.map(label -> NLS.bind(ProjectText.undoWhat, label)).orElse(ProjectText.undo));
        setEnabled(projects().active().filter(ProjectSession::canUndo).isPresent());
    }

    @Override
    public void run() {
        projects().active().filter(ProjectSession::canUndo).ifPresent(ProjectSession::undo);
    }
}
