package org.coursewright.model.edit.command;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.building.Pin;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.eclipse.emf.ecore.EObject;

/** Leaves to the layout what was fixed at places of a wall. */
public final class UnpinCommand extends ProjectCommand {

    private final Wall wall;
    private final List<Pin> pins;

    /**
     * @param wall of a project
     * @param pins of the wall
     */
    public UnpinCommand(Wall wall, List<? extends Pin> pins) {
        super(wall, ElementLabels.of(wall));
        this.wall = wall;
        this.pins = List.copyOf(pins);
    }

    @Override
    protected Optional<Refusal> findRefusal() {
        return Optional.empty();
    }

    @Override
    protected boolean changesAnything() {
        return pins.stream().anyMatch(wall.getPins()::contains);
    }

    @Override
    protected void apply() {
        wall.getPins().removeAll(pins);
    }

    @Override
    protected List<EObject> affected() {
        return List.of(wall);
    }
}
