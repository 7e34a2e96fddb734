package org.coursewright.model.edit.command;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.eclipse.emf.ecore.EObject;

/** An edit that consists of others, all of which are made or none, as one step of the history. */
abstract class CombinedCommand extends ProjectCommand {

    private final List<? extends ProjectCommand> parts;

    /**
     * @param scope an element of the project
     * @param parts that none of which depends on another
     * @param elements that the label names, at least one
     */
    CombinedCommand(EObject scope, List<? extends ProjectCommand> parts, List<? extends EObject> elements) {
        super(scope, ElementLabels.of(elements));
        this.parts = List.copyOf(parts);
    }

    @Override
    protected final Optional<Refusal> findRefusal() {
        return parts.stream().map(ProjectCommand::refusal).flatMap(Optional::stream).findFirst();
    }

    @Override
    protected final boolean changesAnything() {
        return parts.stream().anyMatch(ProjectCommand::changesAnything);
    }

    @Override
    protected final void apply() {
        parts.forEach(ProjectCommand::apply);
    }

    @Override
    protected final List<? extends EObject> affected() {
        return parts.stream().flatMap(part -> part.affected().stream()).distinct().toList();
    }
}
