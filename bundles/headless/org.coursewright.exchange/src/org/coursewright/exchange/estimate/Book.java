package org.coursewright.exchange.estimate;

import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.exchange.table.Cells;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.CoatingType;
import org.coursewright.model.catalogue.CrewType;
import org.coursewright.model.catalogue.Material;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.Plant;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.Estimate;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.Uncertainty;
import org.coursewright.model.project.Project;

/** What tables may name in a project, kept up as they are read. */
final class Book {

    private final Estimate estimate;
    private final References<Material> materials = new References<>("material");
    private final References<CoatingType> coatings = new References<>("coating");
    private final References<MixDesign> mixes = new References<>("mix");
    private final References<CrewType> crews = new References<>("crew");
    private final References<Plant> plant = new References<>("plant");
    private final References<UnitType> units = new References<>("unit type");
    private final References<Wall> walls = new References<>("wall");
    private final References<Uncertainty> uncertainties = new References<>("uncertainty");

    private final boolean complete;

    /**
     * @param project that is read into
     * @param complete whether nothing is added to it but what the table itself holds
     */
    Book(Project project, boolean complete) {
        this.complete = complete;
        if (project.getEstimate() == null && !complete) {
            project.setEstimate(EstimateFactory.eINSTANCE.createEstimate());
        }
        estimate = Optional.ofNullable(project.getEstimate()).orElseGet(EstimateFactory.eINSTANCE::createEstimate);
        estimate.getUncertainties().forEach(uncertainties::add);
        Stream.ofNullable(project.getCatalogue()).forEach(catalogue -> catalogue.getUnitTypes().forEach(units::add));
        Stream.ofNullable(project.getBuilding()).flatMap(building -> building.getStoreys().stream()).forEach(
                storey -> storey.getWalls().forEach(walls::add));
    }

    Estimate estimate() {
        return estimate;
    }

    References<Material> materials() {
        return materials;
    }

    References<CoatingType> coatings() {
        return coatings;
    }

    References<MixDesign> mixes() {
        return mixes;
    }

    References<CrewType> crews() {
        return crews;
    }

    References<Plant> plant() {
        return plant;
    }

    References<UnitType> units() {
        return units;
    }

    References<Wall> walls() {
        return walls;
    }

    /** @return what a cell moves with, made when it is named first unless the project is complete */
    Optional<Uncertainty> uncertainty(Cells cells, String column) {
        return complete ? uncertainties.named(cells, column) : Optional.of(uncertainty(cells.mark(column)));
    }

    /** @return an uncertainty, made when it is named first */
    Uncertainty uncertainty(String mark) {
        return uncertainties.known(mark).orElseGet(() -> {
            Uncertainty made = EstimateFactory.eINSTANCE.createUncertainty();
            made.setMark(mark);
            estimate.getUncertainties().add(made);
            uncertainties.add(made);
            return made;
        });
    }
}
