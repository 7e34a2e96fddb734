package org.coursewright.model.edit.command;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.eclipse.emf.ecore.EObject;

/** Lets a wall follow the rule of the project again. */
public final class ClearBondRuleCommand extends ProjectCommand {

    private final Wall wall;

    /** @param wall of a project */
    public ClearBondRuleCommand(Wall wall) {
        super(wall, ElementLabels.of(wall));
        this.wall = wall;
    }

    @Override
    protected Optional<Refusal> findRefusal() {
        return Optional.empty();
    }

    @Override
    protected boolean changesAnything() {
        return wall.getBondRule() != null;
    }

    @Override
    protected void apply() {
        wall.setBondRule(null);
    }

    @Override
    protected List<EObject> affected() {
        return List.of(wall);
    }
}
