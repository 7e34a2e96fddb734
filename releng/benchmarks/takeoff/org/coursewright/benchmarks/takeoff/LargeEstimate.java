package org.coursewright.benchmarks.takeoff;

import java.math.BigDecimal;
import java.util.List;

import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.CrewMember;
import org.coursewright.model.catalogue.CrewType;
import org.coursewright.model.catalogue.Material;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.MixPart;
import org.coursewright.model.catalogue.UnitSource;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.Estimate;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.RateKind;
import org.coursewright.model.estimate.Task;
import org.coursewright.model.estimate.WorkKind;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;

/** Rooms of four walls side by side, about 20,000 units, with everything priced; invented. */
final class LargeEstimate {

    private static final int ROOMS = 12;
    private static final int SIDE = 232;
    private static final int APART = 400;

    private final Project project = ProjectFactory.eINSTANCE.createProject();
    private final Storey storey = BuildingFactory.eINSTANCE.createStorey();
    private final UnitType unit = CatalogueFactory.eINSTANCE.createUnitType();
    private final Estimate estimate = EstimateFactory.eINSTANCE.createEstimate();

    private LargeEstimate() {
        project.setName("rooms");
        project.setCurrency("USD");
        project.setCatalogue(CatalogueFactory.eINSTANCE.createCatalogue());
        project.setBuilding(BuildingFactory.eINSTANCE.createBuilding());
        project.getBuilding().getStoreys().add(storey);
        project.setEstimate(estimate);
        storey.setMark("1");
        unit();
        for (int room = 0; room < ROOMS; room++) {
            room(room);
        }
        prices();
    }

    static Project project() {
        return new LargeEstimate().project;
    }

    private void unit() {
        unit.setMark("B14");
        unit.setLength(Length.ofInches(14));
        unit.setWidth(Length.ofInches(10));
        unit.setHeight(Length.ofInches(4));
        unit.setMass(BigDecimal.valueOf(14));
        unit.getSpecialLengths().addAll(List.of(Length.ofInchFraction(27, 4), Length.ofInches(10)));
        unit.setKerf(Length.ofInchFraction(3, 16));
        unit.setCutStep(Length.ofInchFraction(1, 4));
        project.getCatalogue().getUnitTypes().add(unit);
    }

    private void room(int number) {
        int x = number * APART;
        int side = SIDE + number % 4;
        wall(number, 1, x, 0, x + side, 0);
        wall(number, 2, x + side, 0, x + side, side);
        wall(number, 3, x + side, side, x, side);
        wall(number, 4, x, side, x, 0);
    }

    private void wall(int room, int side, int fromX, int fromY, int toX, int toY) {
        Wall wall = BuildingFactory.eINSTANCE.createWall();
        wall.setMark("R%d-%d".formatted(room, side));
        wall.setFromX(Length.ofInches(fromX));
        wall.setFromY(Length.ofInches(fromY));
        wall.setToX(Length.ofInches(toX));
        wall.setToY(Length.ofInches(toY));
        wall.setHeight(Length.ofInchFraction(23 * 9, 2));
        wall.setUnitType(unit);
        wall.setElement(side % 2 == 0 ? "C1010" : "B2010");
        if (side == 1) {
            Opening opening = BuildingFactory.eINSTANCE.createOpening();
            opening.setMark("O%d".formatted(room));
            opening.setOffset(Length.ofInches(87));
            opening.setWidth(Length.ofInches(40));
            opening.setSill(Length.ofInches(27));
            opening.setHeight(Length.ofInches(45));
            wall.getOpenings().add(opening);
        }
        storey.getWalls().add(wall);
    }

    private void prices() {
        Material soil = material("soil", "MTQ", 1200, false);
        Material sand = material("sand", "MTQ", 1280, false);
        Material cement = material("cement", "KGM", 1506, true);
        MixDesign blocks = mix("blocks", soil, 15, cement, 1);
        blocks.setDryDensity(BigDecimal.valueOf(1850));
        unit.setSource(UnitSource.MADE_ON_SITE);
        unit.setMix(blocks);
        estimate.setMortar(mix("mortar", sand, 4, cement, 1));
        estimate.setFirstMortar(mix("first", sand, 3, cement, 1));
        List.of("soil", "sand").forEach(each -> rate(each, RateKind.MATERIAL, "MTQ"));
        rate("cement", RateKind.MATERIAL, "KGM");
        rate("water", RateKind.MATERIAL, "LTR");
        rate("scaffold", RateKind.PLANT, "MTK");
        rate("haulage", RateKind.HAULAGE, "TNE");
        List.of("mason", "tender").forEach(each -> rate(each, RateKind.LABOUR, "HUR"));
        CrewType crew = crew();
        for (WorkKind kind : WorkKind.values()) {
            task(kind, crew);
        }
    }

    private Material material(String mark, String code, int density, boolean binder) {
        Material material = CatalogueFactory.eINSTANCE.createMaterial();
        material.setMark(mark);
        material.setUnitCode(code);
        material.setDensity(BigDecimal.valueOf(density));
        material.setBinder(binder);
        project.getCatalogue().getMaterials().add(material);
        return material;
    }

    private MixDesign mix(String mark, Material first, int parts, Material second, int others) {
        MixDesign mix = CatalogueFactory.eINSTANCE.createMixDesign();
        mix.setMark(mark);
        mix.setWaterShare(new BigDecimal("0.15"));
        mix.getParts().add(part(first, parts));
        mix.getParts().add(part(second, others));
        project.getCatalogue().getMixDesigns().add(mix);
        return mix;
    }

    private static MixPart part(Material material, int parts) {
        MixPart part = CatalogueFactory.eINSTANCE.createMixPart();
        part.setMaterial(material);
        part.setParts(BigDecimal.valueOf(parts));
        return part;
    }

    private void rate(String resource, RateKind kind, String code) {
        Rate rate = EstimateFactory.eINSTANCE.createRate();
        rate.setMark(resource);
        rate.setKind(kind);
        rate.setUnitCode(code);
        rate.setPrice(Money.fromStored("12.50 USD"));
        rate.setLowShare(new BigDecimal("0.9"));
        rate.setHighShare(new BigDecimal("1.3"));
        estimate.getRates().add(rate);
    }

    private CrewType crew() {
        CrewType crew = CatalogueFactory.eINSTANCE.createCrewType();
        crew.setMark("masons");
        for (String trade : List.of("mason", "tender")) {
            CrewMember member = CatalogueFactory.eINSTANCE.createCrewMember();
            member.setTrade(trade);
            crew.getMembers().add(member);
        }
        project.getCatalogue().getCrewTypes().add(crew);
        return crew;
    }

    private void task(WorkKind kind, CrewType crew) {
        Task task = EstimateFactory.eINSTANCE.createTask();
        task.setMark(kind.getLiteral());
        task.setKind(kind);
        task.setCrew(crew);
        String unitCode = switch (kind) {
            case LAY, CUT, PRESS, SET_LINTEL -> "H87";
            case MIX, CAST_BEAM -> "MTQ";
            case PLASTER, SEAL, SCAFFOLD -> "MTK";
        };
        task.setOutput(new Quantity(BigDecimal.TEN, unitCode));
        task.setLearningShare(new BigDecimal("0.95"));
        task.setLearningRepetition(BigDecimal.valueOf(500));
        estimate.getTasks().add(task);
    }
}
