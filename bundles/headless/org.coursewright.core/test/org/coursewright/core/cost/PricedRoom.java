package org.coursewright.core.cost;

import java.math.BigDecimal;

import org.coursewright.core.PlanBuilder;
import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.CrewMember;
import org.coursewright.model.catalogue.CrewType;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.Estimate;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.RateKind;
import org.coursewright.model.estimate.Task;
import org.coursewright.model.estimate.WorkKind;
import org.coursewright.model.project.Project;

/**
 * A room of four walls on the module, 1280 units in 20 courses, with a rate for everything: units, two mortars, scaffold,
 * and a crew of a mason and two tenders who lay 20 units an hour.
 */
final class PricedRoom {

    private final PlanBuilder plan = new PlanBuilder();
    private final Estimate estimate = EstimateFactory.eINSTANCE.createEstimate();

    PricedRoom() {
        wall("W1", "0", "0", "232", "0");
        wall("W2", "232", "0", "232", "232");
        wall("W3", "232", "232", "0", "232");
        wall("W4", "0", "232", "0", "0");
        project().setCurrency("USD");
        project().setEstimate(estimate);
        rate("B14", RateKind.MATERIAL, "1.50 USD", "H87");
        rate("mortar of first courses", RateKind.MATERIAL, "10 USD", "FTQ");
        rate("mortar of other courses", RateKind.MATERIAL, "8 USD", "FTQ");
        rate("scaffold", RateKind.PLANT, "2 USD", "MTK");
        rate("mason", RateKind.LABOUR, "30 USD", "HUR");
        rate("tender", RateKind.LABOUR, "20 USD", "HUR");
        task(WorkKind.LAY, "20 H87", crew());
        estimate.setMaterialTaxShare(new BigDecimal("0.1"));
        estimate.setOverheadShare(new BigDecimal("0.1"));
        estimate.setContingencyShare(new BigDecimal("0.05"));
    }

    private void wall(String mark, String fromX, String fromY, String toX, String toY) {
        plan.wall(mark, fromX, fromY, toX, toY);
    }

    Project project() {
        return plan.project();
    }

    Estimate estimate() {
        return estimate;
    }

    Wall wall(int index) {
        return project().getBuilding().getStoreys().get(0).getWalls().get(index);
    }

    UnitType unit() {
        return project().getCatalogue().getUnitTypes().get(0);
    }

    Rate rate(String resource) {
        return estimate.getRates().stream().filter(rate -> rate.getMark().equals(resource)).findFirst().orElseThrow();
    }

    Rate rate(String resource, RateKind kind, String price, String unit) {
        Rate rate = EstimateFactory.eINSTANCE.createRate();
        rate.setMark(resource);
        rate.setKind(kind);
        rate.setPrice(Money.fromStored(price));
        rate.setUnitCode(unit);
        estimate.getRates().add(rate);
        return rate;
    }

    Task task(WorkKind kind, String output, CrewType crew) {
        Task task = EstimateFactory.eINSTANCE.createTask();
        task.setMark(kind.getLiteral());
        task.setKind(kind);
        task.setOutput(Quantity.fromStored(output));
        task.setCrew(crew);
        estimate.getTasks().add(task);
        return task;
    }

    CrewType crew() {
        CrewType crew = CatalogueFactory.eINSTANCE.createCrewType();
        crew.setMark("masons");
        crew.getMembers().add(member("mason", 1));
        crew.getMembers().add(member("tender", 2));
        project().getCatalogue().getCrewTypes().add(crew);
        return crew;
    }

    static CrewMember member(String trade, int count) {
        CrewMember member = CatalogueFactory.eINSTANCE.createCrewMember();
        member.setTrade(trade);
        member.setCount(count);
        return member;
    }
}
