package org.coursewright.model.edit.command;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.eclipse.emf.ecore.EObject;

/** An edit that takes an element out of the project, with all it holds and all that makes no sense without it. */
abstract class RemoveCommand extends ProjectCommand {

    private final EObject removed;
    private final EObject parent;

    RemoveCommand(EObject removed) {
        super(removed, ElementLabels.of(removed));
        this.removed = removed;
        this.parent = removed.eContainer();
    }

    @Override
    protected final Optional<Refusal> findRefusal() {
        return Optional.empty();
    }

    @Override
    protected final boolean changesAnything() {
        return true;
    }

    @Override
    protected final void apply() {
        new Removal(root()).remove(removed);
    }

    /** The element while it is there, else what it was part of. */
    @Override
    protected final List<EObject> affected() {
        return parent != null && parent.eContents().contains(removed)
                ? List.of(removed)
                : Optional.ofNullable(parent).stream().toList();
    }
}
