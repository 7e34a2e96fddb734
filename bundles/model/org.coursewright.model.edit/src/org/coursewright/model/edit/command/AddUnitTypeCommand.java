package org.coursewright.model.edit.command;

import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;

/** Adds a unit to the catalogue. */
public final class AddUnitTypeCommand extends AddCommand {

    private final Project project;
    private final UnitType unitType;

    /**
     * @param project to add to
     * @param unitType with its values, in no project yet
     */
    public AddUnitTypeCommand(Project project, UnitType unitType) {
        super(project, unitType);
        this.project = project;
        this.unitType = unitType;
    }

    @Override
    protected void apply() {
        if (project.getCatalogue() == null) {
            project.setCatalogue(CatalogueFactory.eINSTANCE.createCatalogue());
        }
        project.getCatalogue().getUnitTypes().add(unitType);
    }
}
