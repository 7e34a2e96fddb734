package org.coursewright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.coursewright.core.PlanBuilder;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.Material;
import org.coursewright.model.catalogue.MixBasis;
import org.coursewright.model.catalogue.MixDesign;
import org.coursewright.model.catalogue.MixPart;
import org.coursewright.model.catalogue.Plant;
import org.coursewright.model.catalogue.PlantKind;
import org.coursewright.model.catalogue.UnitSource;
import org.junit.jupiter.api.Test;

class MixSheetsTest {

    private final PricedRoom room = new PricedRoom();
    private final Material soil = material("soil", "MTQ", "1200");
    private final Material cement = material("cement", "BG", "1506");
    private final MixDesign mix = CatalogueFactory.eINSTANCE.createMixDesign();

    MixSheetsTest() {
        cement.setBinder(true);
        cement.setParticleDensity(BigDecimal.valueOf(3150));
        cement.setPack(Quantity.fromStored("50 KGM"));
        mix.setMark("stabilised");
        mix.setBasis(MixBasis.MASS);
        mix.getParts().add(part(soil, "20"));
        mix.getParts().add(part(cement, "1"));
        mix.setWaterShare(new BigDecimal("0.10"));
        mix.setLeastWaterShare(new BigDecimal("0.08"));
        mix.setMostWaterShare(new BigDecimal("0.14"));
        mix.setDryDensity(BigDecimal.valueOf(1900));
        room.project().getCatalogue().getMixDesigns().add(mix);
        room.unit().setLength(Length.ofMillimetres(290));
        room.unit().setWidth(Length.ofMillimetres(140));
        room.unit().setHeight(Length.ofMillimetres(90));
        room.unit().setMix(mix);
    }

    /**
     * A block of 290 × 140 × 90 mm at 1900 kg/m³ weighs 6.9426 kg; 5 % of soil makes 151.24 blocks of a 50 kg bag; 1.65 times
     * its volume of loose mix are 6.0291 L (published notes on stabilised soil blocks; arithmetic checked independently).
     */
    @Test
    void blockTakesThePublishedAmounts() {
        MixSheet.Block block = sheet().block().orElseThrow();
        assertThat(block.dryMass()).isCloseTo(new BigDecimal("6.9426"), within(new BigDecimal("1e-9")));
        assertThat(block.fromPack().orElseThrow()).isCloseTo(new BigDecimal("151.24"), within(new BigDecimal("0.01")));
        assertThat(block.ofTotal()).isCloseTo(new BigDecimal("0.047619"), within(new BigDecimal("1e-6")));
        assertThat(block.loose()).isCloseTo(new BigDecimal("6.0291"), within(new BigDecimal("1e-9")));
        assertThat(block.water()).isCloseTo(new BigDecimal("0.69426"), within(new BigDecimal("1e-9")));
        assertThat(block.leastWater()).isLessThan(block.water());
        assertThat(block.mostWater()).isGreaterThan(block.water());
    }

    @Test
    void partsByMassAndByVolumeSayTheSame() {
        MixSheet.Part part = sheet().parts().get(1);
        assertThat(part.byMass()).isEqualByComparingTo("0.05");
        assertThat(part.byVolume()).isCloseTo(new BigDecimal("0.05").multiply(new BigDecimal("1200")).divide(
                new BigDecimal("1506"), 12, RoundingMode.HALF_EVEN), within(new BigDecimal("1e-9")));
    }

    /** What comes in packs goes in by half packs, what does not by whole litres. */
    @Test
    void batchIsOfWholeLitresAndHalfPacks() {
        Plant mixer = CatalogueFactory.eINSTANCE.createPlant();
        mixer.setMark("big mixer");
        mixer.setKind(PlantKind.MIXER);
        mixer.setCapacity(Quantity.fromStored("400 LTR"));
        room.project().getCatalogue().getPlant().add(mixer);
        MixSheet.Batch batch = sheet().batch().orElseThrow();
        assertThat(batch.mixer()).isEqualTo("big mixer");
        assertThat(batch.lines()).extracting(MixSheet.BatchPart::material).containsExactly("soil", "cement");
        assertThat(batch.lines().get(0).rounded().stripTrailingZeros().scale()).isLessThanOrEqualTo(0);
        assertThat(batch.lines().get(1).rounded().multiply(BigDecimal.valueOf(2)).stripTrailingZeros().scale())
                .isLessThanOrEqualTo(0);
        assertThat(batch.litres()).isBetween(new BigDecimal("300"), new BigDecimal("500"));
    }

    /** Mortar with grains of 6 mm in joints of 3/8 in: twice the grain is 12 mm, more than 9.525 mm. */
    @Test
    void grainIsHeldAgainstTheThinnestJoint() {
        soil.setLargestParticle(Length.ofMillimetres(6));
        room.estimate().setMortar(mix);
        room.project().setBondRule(BuildingFactory.eINSTANCE.createBondRule());
        room.project().getBondRule().setBedLeast(PlanBuilder.in("3/8"));
        assertThat(sheet().grain().orElseThrow().fits()).isFalse();
        soil.setLargestParticle(Length.ofMillimetres(4));
        assertThat(sheet().grain().orElseThrow().fits()).isTrue();
    }

    /**
     * By hand: with one rate each for soil and cement, pressed blocks take 1.05 × their count; the cement in them is 1 ÷ 21 of
     * their dry mass, in bags of 50 kg.
     */
    @Test
    void madeBlocksTakeSoilStabiliserAndWater() {
        room.unit().setSource(UnitSource.MADE_ON_SITE);
        ResourceTakeoff takeoff = DerivationGraph.once(room.project(), PriceResults.RESOURCES);
        BigDecimal pressed = amount(takeoff, "cement").multiply(BigDecimal.valueOf(50 * 21)).divide(new BigDecimal(
                "6.9426"), 6, RoundingMode.HALF_UP);
        assertThat(pressed.subtract(pressed.setScale(0, RoundingMode.HALF_UP)).abs()).isLessThan(
                new BigDecimal("0.001"));
        assertThat(amount(takeoff, "water")).isCloseTo(pressed.multiply(new BigDecimal("0.69426")), within(
                new BigDecimal("0.01")));
        assertThat(takeoff.lines()).noneMatch(line -> line.resource().equals("B14"));
    }

    private static BigDecimal amount(ResourceTakeoff takeoff, String resource) {
        return takeoff.lines().stream().filter(line -> line.resource().equals(resource)).map(line -> line.amount()
                .quantity().value()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private MixSheet sheet() {
        return MixSheets.of(room.project()).sheets().get(0);
    }

    private Material material(String mark, String unit, String density) {
        Material material = CatalogueFactory.eINSTANCE.createMaterial();
        material.setMark(mark);
        material.setUnitCode(unit);
        material.setDensity(new BigDecimal(density));
        room.project().getCatalogue().getMaterials().add(material);
        return material;
    }

    private static MixPart part(Material material, String parts) {
        MixPart part = CatalogueFactory.eINSTANCE.createMixPart();
        part.setMaterial(material);
        part.setParts(new BigDecimal(parts));
        return part;
    }
}
