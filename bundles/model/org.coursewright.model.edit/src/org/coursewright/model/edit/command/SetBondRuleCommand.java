package org.coursewright.model.edit.command;

import java.util.function.Consumer;

import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.project.Project;

/** Says how walls are laid: all walls of the project, or one wall where it differs. */
public final class SetBondRuleCommand extends CopyCommand {

    private final Consumer<BondRule> place;

    /**
     * The rule of the project.
     *
     * @param project whose walls follow the rule unless they have their own
     * @param rule all of the rule, in no project
     */
    public SetBondRuleCommand(Project project, BondRule rule) {
        super(project, project.getBondRule(), rule, ElementLabels.of(project));
        this.place = project::setBondRule;
    }

    /**
     * The rule of one wall.
     *
     * @param wall of a project
     * @param rule what differs from the rule of the project, in no project
     */
    public SetBondRuleCommand(Wall wall, BondRule rule) {
        super(wall, wall.getBondRule(), rule, ElementLabels.of(wall));
        this.place = wall::setBondRule;
    }

    @Override
    protected BondRule make() {
        BondRule made = BuildingFactory.eINSTANCE.createBondRule();
        place.accept(made);
        return made;
    }
}
