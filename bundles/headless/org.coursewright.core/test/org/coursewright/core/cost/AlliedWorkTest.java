package org.coursewright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.coursewright.core.PlanBuilder;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Finish;
import org.coursewright.model.building.GradeBeam;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Reinforcement;
import org.coursewright.model.building.WallSide;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.CoatingType;
import org.coursewright.model.catalogue.FinishType;
import org.coursewright.model.catalogue.LintelType;
import org.coursewright.model.catalogue.Material;
import org.coursewright.model.estimate.RateKind;
import org.junit.jupiter.api.Test;

/** Beams, sealer, plaster, lintels and haulage of the priced room, each worked by hand (geometry). */
class AlliedWorkTest {

    private static final BigDecimal NEAR = new BigDecimal("1e-6");

    private final PricedRoom room = new PricedRoom();

    /**
     * A beam of 16 × 12 in under W1, 232 in by its centre line: 44,544 in³ = 0.729945 m³. One bar of 20 ft covers it, so two
     * lines are 464 in = 11.7856 m of #4, 0.994 kg/m: 11.714886 kg. Sealed on top and both sides, 232 × 40 in = 5.987085 m²,
     * in two coats at 8 m² a litre: 1.496771 L.
     */
    @Test
    void gradeBeamTakesConcreteSteelAndSealer() {
        GradeBeam beam = BuildingFactory.eINSTANCE.createGradeBeam();
        beam.setMark("G1");
        beam.getWalls().add(room.wall(0));
        beam.setWidth(PlanBuilder.in("16"));
        beam.setDepth(PlanBuilder.in("12"));
        Reinforcement steel = BuildingFactory.eINSTANCE.createReinforcement();
        steel.setBar("#4");
        steel.setLines(2);
        steel.setStock(PlanBuilder.in("240"));
        steel.setLap(PlanBuilder.in("24"));
        beam.setReinforcement(steel);
        room.project().getBuilding().getGradeBeams().add(beam);
        Material material = CatalogueFactory.eINSTANCE.createMaterial();
        material.setMark("sealer");
        CoatingType sealer = CatalogueFactory.eINSTANCE.createCoatingType();
        sealer.setMark("sealer");
        sealer.setMaterial(material);
        sealer.setCoverage(BigDecimal.valueOf(8));
        sealer.setCoats(2);
        room.project().getCatalogue().getMaterials().add(material);
        room.project().getCatalogue().getCoatingTypes().add(sealer);
        room.estimate().setSealer(sealer);

        assertThat(amount("concrete")).isCloseTo(new BigDecimal("0.729945"), within(NEAR));
        assertThat(amount("bar #4")).isCloseTo(new BigDecimal("11.714886"), within(NEAR));
        assertThat(amount("sealer")).isCloseTo(new BigDecimal("1.496771"), within(NEAR));
        assertThat(line("concrete").element()).isEqualTo("A1010");
    }

    /**
     * W1 from face to face is 242 in, 90 in high: 21,780 in². A window of 36 × 45 in takes out 1620; its reveals, half the wall
     * of 10 in deep all round, are (2 × 45 + 2 × 36) × 5 = 810. 20,970 in² on both sides, half an inch thick: 20,970 in³ =
     * 0.343637 m³.
     */
    @Test
    void plasterIsLessTheWindowAndMoreItsReveals() {
        window();
        FinishType type = CatalogueFactory.eINSTANCE.createFinishType();
        type.setMark("P1");
        type.setThickness(PlanBuilder.in("1/2"));
        room.project().getCatalogue().getFinishTypes().add(type);
        Finish finish = BuildingFactory.eINSTANCE.createFinish();
        finish.setType(type);
        finish.setSide(WallSide.BOTH);
        room.wall(0).getFinishes().add(finish);

        assertThat(amount("plaster P1")).isCloseTo(new BigDecimal("0.343637"), within(NEAR));
        assertThat(line("plaster P1").element()).isEqualTo("C3010");
    }

    /** Only from 0 to 36 in: 242 × 36 less 36 × 9 in of the window, its sill and 9 in of each jamb: 8712 − 324 + (18 + 36) × 5. */
    @Test
    void plasterOfAStripTakesThePartOfTheWindowInIt() {
        window();
        FinishType type = CatalogueFactory.eINSTANCE.createFinishType();
        type.setMark("dado");
        type.setThickness(PlanBuilder.in("1"));
        room.project().getCatalogue().getFinishTypes().add(type);
        Finish finish = BuildingFactory.eINSTANCE.createFinish();
        finish.setType(type);
        finish.setTo(PlanBuilder.in("36"));
        room.wall(0).getFinishes().add(finish);

        BigDecimal cubicInches = amount("plaster dado").divide(new BigDecimal("0.000016387064"), 6,
                RoundingMode.HALF_UP);
        assertThat(cubicInches).isCloseTo(new BigDecimal("8658"), within(new BigDecimal("0.001")));
    }

    /** 36 + 2 × 12 in long, 9 in high, as thick as the wall: 60 × 9 × 10 in³ = 0.088490 m³. */
    @Test
    void lintelIsCountedByVolume() {
        Opening window = window();
        LintelType lintel = CatalogueFactory.eINSTANCE.createLintelType();
        lintel.setMark("L");
        lintel.setHeight(PlanBuilder.in("9"));
        lintel.setBearing(PlanBuilder.in("12"));
        room.project().getCatalogue().getLintelTypes().add(lintel);
        window.setLintelType(lintel);
        assertThat(amount("lintel")).isCloseTo(new BigDecimal("0.088490"), within(NEAR));
        assertThat(line("lintel").amount().elements()).containsExactly("W1/O1");
    }

    /** 1344 bought units of 14 kg, if there is a rate for haulage at all. */
    @Test
    void boughtUnitsAreHauledByTheirMass() {
        assertThat(resources().lines()).noneMatch(line -> line.resource().equals("haulage"));
        room.rate("haulage", RateKind.HAULAGE, "20 USD", "TNE");
        assertThat(amount("haulage")).isEqualByComparingTo("18816");
    }

    private Opening window() {
        Opening opening = BuildingFactory.eINSTANCE.createOpening();
        opening.setMark("O1");
        opening.setOffset(PlanBuilder.in("87"));
        opening.setWidth(PlanBuilder.in("36"));
        opening.setSill(PlanBuilder.in("27"));
        opening.setHeight(PlanBuilder.in("45"));
        room.wall(0).getOpenings().add(opening);
        return opening;
    }

    private BigDecimal amount(String resource) {
        return line(resource).amount().quantity().value();
    }

    private ResourceLine line(String resource) {
        return resources().lines().stream().filter(line -> line.resource().equals(resource)).findFirst().orElseThrow();
    }

    private ResourceTakeoff resources() {
        return DerivationGraph.once(room.project(), PriceResults.RESOURCES);
    }
}
