package org.coursewright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.junit.jupiter.api.Test;

class QuantityTableTest {

    @Test
    void tableHasEveryLineOfTheTakeoffAndEveryResource() {
        QuantityTable table = DerivationGraph.once(new PricedRoom().project(), PriceResults.QUANTITIES);
        assertThat(table.rows()).hasSize(table.takeoff().lines().size() + table.resources().lines().size());
        assertThat(table.rows().get(0).kind()).isEqualTo("laid whole");
        assertThat(table.rows()).extracting(QuantityRow::item).contains("B14 stretcher", "mason", "scaffold");
    }

    /** By hand: 2.5 bags for outer walls and 1.25 for partitions are 3.75 bags. */
    @Test
    void amountsOfOneResourceAddUp() {
        QuantityGroup cement = QuantityGrouping.ITEM
                .of(List.of(resource("cement", "B2010", "2.5", UnitCode.BAG), resource(
                        "sand", "B2010", "1", UnitCode.CUBIC_METRE), resource("cement", "C1010", "1.25", UnitCode.BAG)))
                .get(0);
        assertThat(cement.title()).isEqualTo("cement");
        assertThat(cement.total()).contains(Quantity.of(new BigDecimal("3.75"), UnitCode.BAG));
    }

    @Test
    void differentResourcesHaveNoTotalThoughTheyAreCountedInOneUnit() {
        assertThat(QuantityGrouping.KIND
                .of(List.of(resource("cement", "B2010", "2", UnitCode.BAG), resource("lime", "B2010",
                        "1", UnitCode.BAG)))
                .get(0).total()).isEmpty();
    }

    @Test
    void blocksLaidAndBlocksOrderedHaveNoTotal() {
        List<QuantityRow> rows = List.of(line("B14", "units.whole", "100"), line("B14", "units.ordered", "105"));
        assertThat(QuantityGrouping.ITEM.of(rows).get(0).total()).isEmpty();
    }

    @Test
    void blocksLaidOfTwoTypesAddUp() {
        List<QuantityRow> rows = List.of(line("B14", "units.whole", "100"), line("B10", "units.whole", "20"));
        assertThat(QuantityGrouping.KIND.of(rows).get(0).total()).contains(Quantity.of(new BigDecimal("120"),
                UnitCode.PIECE));
    }

    @Test
    void elementsGoByTheirCodeAndTitle() {
        assertThat(QuantityGrouping.ELEMENT.of(List.of(resource("cement", "B2010", "1", UnitCode.BAG), line("B14",
                "units.whole", "1")))).extracting(QuantityGroup::title).containsExactly("B2010 Exterior Walls",
                        "Whole building");
    }

    private static QuantityRow resource(String name, String element, String amount, UnitCode unit) {
        return new QuantityRow(name, "mortar", Optional.of(element), amount(name, "material.packs", amount, unit));
    }

    private static QuantityRow line(String item, String formula, String amount) {
        return new QuantityRow(item, formula.equals("units.whole") ? "laid whole" : "whole to order", Optional.empty(),
                amount(item, formula, amount, UnitCode.PIECE));
    }

    private static TakeoffLine amount(String item, String formula, String amount, UnitCode unit) {
        return new TakeoffLine(item, Quantity.of(new BigDecimal(amount), unit), formula, "", "geometry", List.of(), List
                .of());
    }
}
