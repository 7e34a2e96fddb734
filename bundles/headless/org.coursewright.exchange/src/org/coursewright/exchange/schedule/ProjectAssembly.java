package org.coursewright.exchange.schedule;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.remark.Remarks;
import org.coursewright.exchange.table.Rows;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.measure.Length;
import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.Building;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.TopPoint;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.Catalogue;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;
import org.eclipse.emf.ecore.EObject;

/** Builds a project of the rows that were each found sound. Used once. */
final class ProjectAssembly {

    private final ImportSettings settings;
    private final Units units;
    private final Plan plan;
    private final LintelBook lintels;
    private final Map<UnitRow, UnitType> unitTypes = new LinkedHashMap<>();
    private final Map<String, Storey> storeys = new LinkedHashMap<>();
    private final Map<String, Wall> walls = new LinkedHashMap<>();
    private final Map<EObject, Place> rows = new HashMap<>();

    ProjectAssembly(ImportSettings settings, Units units, Plan plan, Remarks remarks) {
        this.settings = settings;
        this.units = units;
        this.plan = plan;
        lintels = new LintelBook(settings.format(), remarks);
    }

    Project project(Rows<WallRow> wallRows, List<OpeningRow> openingRows) {
        units.neededBy(wallRows.sound()).forEach(this::addUnit);
        wallRows.sound().forEach(this::addWall);
        openingRows.forEach(row -> wallRows.find(row.wall()).ifPresent(wall -> addOpening(row, wall)));
        Project project = ProjectFactory.eINSTANCE.createProject();
        project.setName(settings.name());
        project.setDisplayUnit(settings.format().unit());
        project.setInchDenominator(settings.format().inchDenominator());
        project.setCatalogue(catalogue());
        project.setBondRule(bondRule(settings.rule()));
        Building building = BuildingFactory.eINSTANCE.createBuilding();
        building.getStoreys().addAll(storeys.values());
        project.setBuilding(building);
        return project;
    }

    /** @return where the walls, openings and units that were built come from */
    Map<EObject, Place> rows() {
        return Map.copyOf(rows);
    }

    private void addUnit(UnitRow row) {
        UnitType unit = UnitTypes.of(row);
        unitTypes.put(row, unit);
        rows.put(unit, row.place());
    }

    private Catalogue catalogue() {
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        catalogue.getUnitTypes().addAll(unitTypes.values());
        catalogue.getLintelTypes().addAll(lintels.types());
        return catalogue;
    }

    private static BondRule bondRule(RuleChoice choice) {
        BondRule rule = BuildingFactory.eINSTANCE.createBondRule();
        choice.lap().ifPresent(rule::setLeastLap);
        rule.setHeadLeast(choice.head().least());
        rule.setHeadNominal(choice.head().nominal());
        rule.setHeadMost(choice.head().most());
        rule.setBedLeast(choice.bed().least());
        rule.setBedNominal(choice.bed().nominal());
        rule.setBedMost(choice.bed().most());
        choice.shortest().ifPresent(rule::setShortestPiece);
        return rule;
    }

    private void addWall(WallRow row) {
        Wall wall = BuildingFactory.eINSTANCE.createWall();
        wall.setMark(row.mark());
        wall.setFromX(row.fromX());
        wall.setFromY(row.fromY());
        wall.setToX(row.toX());
        wall.setToY(row.toY());
        wall.setUnitType(unitTypes.get(units.find(row.unit()).orElseThrow()));
        wall.setBond(row.bond());
        wall.setBase(row.base());
        wall.setHeight(row.height());
        wall.setMoveTolerance(row.move());
        wall.setSizeTolerance(row.size());
        row.gable().ifPresent(rise -> addGable(wall, rise, plan.outerLength(row)));
        storeys.computeIfAbsent(Schedule.key(row.storey()), key -> storey(row.storey())).getWalls().add(wall);
        walls.put(Schedule.key(row.mark()), wall);
        rows.put(wall, row.place());
    }

    private static Storey storey(String mark) {
        Storey storey = BuildingFactory.eINSTANCE.createStorey();
        storey.setMark(mark);
        return storey;
    }

    private static void addGable(Wall wall, Length rise, Length length) {
        Length middle = Length.ofUnits(length.units() / 2);
        addTopPoint(wall, Length.ZERO, wall.getHeight());
        addTopPoint(wall, middle, wall.getHeight().plus(rise));
        addTopPoint(wall, length, wall.getHeight());
    }

    private static void addTopPoint(Wall wall, Length offset, Length height) {
        TopPoint point = BuildingFactory.eINSTANCE.createTopPoint();
        point.setOffset(offset);
        point.setHeight(height);
        wall.getTopProfile().add(point);
    }

    private void addOpening(OpeningRow row, WallRow wallRow) {
        Wall wall = walls.get(Schedule.key(row.wall()));
        Length course = units.find(wallRow.unit()).orElseThrow().height().plus(settings.rule().bed().nominal());
        Opening opening = BuildingFactory.eINSTANCE.createOpening();
        opening.setMark(row.mark());
        opening.setKind(row.kind());
        opening.setOffset(row.offset());
        opening.setWidth(row.width());
        opening.setSill(row.sill());
        opening.setHeight(row.height());
        opening.setMoveTolerance(row.move());
        opening.setSizeTolerance(row.size());
        lintels.typeFor(row, course).ifPresent(opening::setLintelType);
        wall.getOpenings().add(opening);
        rows.put(opening, row.place());
    }
}
