package org.coursewright.diagram.ui.editor;

import java.util.Optional;

import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.edit.Refusal;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.project.Project;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.saving.ProjectSaveable;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.Saveable;

/**
 * What ties an editor to the open project that it shows, from its opening to its {@link #end}: the editor follows the
 * project's edits, saves the project, and closes with it.
 */
@SuppressWarnings("resource") // whoever opened the project closes its session
public final class ShownProject implements OpenProjectsListener {

    private final IEditorPart editor;
    private final ProjectSession session;
    private final Runnable edited;
    private final ProjectSaveable saveable;
    private final OpenProjects projects;

    /**
     * @param editor that has its site
     * @param input that it shows
     * @param edited run after the project was edited or saved, and after its unsaved state changed
     */
    public ShownProject(IEditorPart editor, ElementInput input, Runnable edited) {
        this.editor = editor;
        this.session = input.session();
        this.edited = edited;
        this.saveable = new ProjectSaveable(input.session());
        this.projects = editor.getSite().getService(OpenProjects.class);
        projects.addListener(this);
    }

    /** @return the session of the project */
    public ProjectSession session() {
        return session;
    }

    /** @return the project */
    public Project project() {
        return session.project();
    }

    /** @return the results that follow from the project */
    public DerivationGraph results() {
        return session.derived();
    }

    /** @return whether it has edits that are not saved */
    public boolean isDirty() {
        return session.isDirty();
    }

    /**
     * Makes an edit, which can be undone.
     *
     * @param command that makes it
     * @return why not, in which case nothing has changed
     */
    public Optional<String> execute(ProjectCommand command) {
        Optional<String> refusal = command.refusal().map(Refusal::reason);
        if (refusal.isEmpty()) {
            session.execute(command);
        }
        return refusal;
    }

    /** @return the project as the window's questions about unsaved work see it */
    Saveable saveable() {
        return saveable;
    }

    /** Lets undo, redo and save work on the project, as the editor has the focus or acts. */
    public void activate() {
        projects.activate(session);
    }

    /**
     * @param element of the project, or once part of it
     * @return whether it is part of an open project, which it is not while its removal is not undone
     */
    public boolean holds(EObject element) {
        return projects.sessionOf(element).isPresent();
    }

    @Override
    public void projectChanged(Change change, ProjectSession changed) {
        if (changed == session && change == Change.CLOSED) {
            editor.getSite().getPage().closeEditor(editor, false);
        } else if (changed == session && change == Change.EDITED) {
            edited.run();
        }
    }

    /** Ends the tie, as the editor is closed. */
    public void end() {
        projects.removeListener(this);
    }
}
