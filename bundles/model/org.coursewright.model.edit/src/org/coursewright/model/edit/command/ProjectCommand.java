package org.coursewright.model.edit.command;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.model.edit.EditTexts;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.coursewright.model.project.Project;
import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.change.ChangeDescription;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * An edit of a project: one intention of a person, undone and done again exactly.
 *
 * <p>A command is made for one edit and executed at most once. It is executable if nothing speaks against it
 * ({@link #refusal()}) and it would change something.
 */
public abstract class ProjectCommand extends AbstractCommand {

    private final EObject scope;
    private final Object[] labelValues;
    private ChangeDescription recorded;

    /**
     * @param scope an element of the project that is edited, not null
     * @param labelValues what the label of this kind of command is filled with
     */
    protected ProjectCommand(EObject scope, Object... labelValues) {
        this.scope = Objects.requireNonNull(scope, "scope");
        this.labelValues = labelValues.clone();
    }

    /** Comes from {@code texts.properties} by the name of the class. */
    @Override
    public String getLabel() {
        return EditTexts.of("command." + getClass().getSimpleName(), labelValues);
    }

    /** @return why the edit cannot be made, empty if nothing speaks against it */
    public final Optional<Refusal> refusal() {
        return isInAProject(scope)
                ? findRefusal()
                : Optional.of(Refusal.of("notThere", ElementLabels.of(scope)));
    }

    /** @return what speaks against the edit, the project being there */
    protected abstract Optional<Refusal> findRefusal();

    /** @return whether the project would be another after the edit */
    protected abstract boolean changesAnything();

    /** Makes the edit; whatever it changes in the project is recorded. */
    protected abstract void apply();

    /** @return the elements to look at; where none of them is in the project, the scope stands for them */
    protected abstract List<? extends EObject> affected();

    /** @return the root of the project, or of what was cut out of one */
    protected final EObject root() {
        return EcoreUtil.getRootContainer(scope);
    }

    /** @return whether an element is part of the project that is edited */
    protected final boolean isInProject(EObject element) {
        return EcoreUtil.getRootContainer(element) == root();
    }

    @Override
    public final boolean canExecute() {
        return recorded == null && refusal().isEmpty() && changesAnything();
    }

    /** @throws IllegalStateException if it was executed before */
    @Override
    public final void execute() {
        if (recorded != null) {
            throw new IllegalStateException("\"%s\" was executed before; redo it.".formatted(getLabel()));
        }
        EObject root = root();
        ChangeRecorder recorder = new ChangeRecorder(root);
        boolean applied = false;
        try {
            apply();
            applied = true;
        } finally {
            ChangeDescription change = recorder.endRecording();
            // a root outside any resource would be taken for one that was cut out, and be moved into the description
            change.getObjectsToAttach().remove(root);
            recorder.dispose();
            if (applied) {
                recorded = change;
            } else {
                change.apply();
            }
        }
    }

    @Override
    public final boolean canUndo() {
        return recorded != null;
    }

    @Override
    public final void undo() {
        recorded.applyAndReverse();
    }

    @Override
    public final void redo() {
        recorded.applyAndReverse();
    }

    @Override
    public final Collection<?> getAffectedObjects() {
        List<? extends EObject> there = affected().stream().filter(ProjectCommand::isInAProject).toList();
        return there.isEmpty() && isInAProject(scope) ? List.of(scope) : there;
    }

    private static boolean isInAProject(EObject element) {
        return EcoreUtil.getRootContainer(element) instanceof Project;
    }

    @Override
    public final Collection<?> getResult() {
        return getAffectedObjects();
    }
}
