package org.coursewright.layout.ui.tests;

import java.nio.file.Path;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Storey;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;

/** A project with a unit of 14 x 10 x 4 in and two storeys without walls. */
final class EmptyStorey {

    private EmptyStorey() {
    }

    /** Writes it into a folder and returns its file. */
    static Path in(Path folder) throws ProjectFileException {
        Project project = ProjectFactory.eINSTANCE.createProject();
        project.setName("Shed");
        UnitType unit = CatalogueFactory.eINSTANCE.createUnitType();
        unit.setMark("B14");
        unit.setLength(Length.ofInches(14));
        unit.setWidth(Length.ofInches(10));
        unit.setHeight(Length.ofInches(4));
        project.setCatalogue(CatalogueFactory.eINSTANCE.createCatalogue());
        project.getCatalogue().getUnitTypes().add(unit);
        project.setBuilding(BuildingFactory.eINSTANCE.createBuilding());
        for (String mark : new String[]{"1", "2"}) {
            Storey storey = BuildingFactory.eINSTANCE.createStorey();
            storey.setMark(mark);
            project.getBuilding().getStoreys().add(storey);
        }
        Path file = folder.resolve("shed.coursewright");
        new ProjectStore().save(project, file);
        return file;
    }
}
