package org.coursewright.model.edit;

import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.model.building.BondBeam;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.GaugePin;
import org.coursewright.model.building.Junction;
import org.coursewright.model.building.JunctionEnd;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.TopPoint;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallPlace;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.programme.Activity;
import org.coursewright.model.programme.ProgrammeFactory;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalFactory;

/** A room of four walls with a door, and everything that refers to them. */
public final class SampleBuilding {

    public final Project project = ProjectFactory.eINSTANCE.createProject();
    public final UnitType unit = unit("B14", 14);
    public final UnitType otherUnit = unit("B10", 10);
    public final Storey storey = BuildingFactory.eINSTANCE.createStorey();
    public final Wall wall = wall("W1", 0, 0, 200, 0);
    public final Wall ruledWall = wall("W4", 0, 150, 0, 0);
    public final Opening door = opening("D1", OpeningKind.DOOR);
    public final Junction corner = BuildingFactory.eINSTANCE.createJunction();

    public final GaugePin pin = BuildingFactory.eINSTANCE.createGaugePin();
    public final Rate rate = rate("cement");
    public final Scenario scenario = scenario("made");

    public SampleBuilding() {
        project.setName("Store");
        project.setCatalogue(CatalogueFactory.eINSTANCE.createCatalogue());
        project.getCatalogue().getUnitTypes().add(unit);
        project.getCatalogue().getUnitTypes().add(otherUnit);
        project.setBuilding(BuildingFactory.eINSTANCE.createBuilding());
        project.getBuilding().getStoreys().add(storey);
        storey.setMark("G");
        storey.getWalls().add(wall);
        storey.getWalls().add(wall("W2", 200, 0, 200, 150));
        storey.getWalls().add(wall("W3", 200, 150, 0, 150));
        storey.getWalls().add(ruledWall);
        ruledWall.setBondRule(BuildingFactory.eINSTANCE.createBondRule());
        ruledWall.getBondRule().setLeastLap(Length.ofInches(3));
        wall.getOpenings().add(door);
        gable(storey.getWalls().get(1));
        addReferrers();
        project.setEstimate(EstimateFactory.eINSTANCE.createEstimate());
        project.getEstimate().getRates().add(rate);
        project.getEstimate().getScenarios().add(scenario);
    }

    public static Rate rate(String resource) {
        Rate made = EstimateFactory.eINSTANCE.createRate();
        made.setMark(resource);
        made.setPrice(Money.fromStored("12.50 USD"));
        made.setUnitCode("KGM");
        return made;
    }

    public static Scenario scenario(String mark) {
        Scenario made = EstimateFactory.eINSTANCE.createScenario();
        made.setMark(mark);
        return made;
    }

    private static void gable(Wall wall) {
        for (long offset : new long[]{0, 80, 160}) {
            TopPoint point = BuildingFactory.eINSTANCE.createTopPoint();
            point.setOffset(Length.ofInches(offset));
            point.setHeight(Length.ofInches(offset == 80 ? 136 : 96));
            wall.getTopProfile().add(point);
        }
    }

    private void addReferrers() {
        corner.getEnds().add(end(wall, WallPlace.END));
        corner.getEnds().add(end(storey.getWalls().get(1), WallPlace.START));
        corner.setThrough(wall);
        project.getBuilding().getJunctions().add(corner);
        BondBeam beam = BuildingFactory.eINSTANCE.createBondBeam();
        beam.setMark("BB1");
        beam.getWalls().addAll(storey.getWalls());
        project.getBuilding().getBondBeams().add(beam);
        Activity activity = ProgrammeFactory.eINSTANCE.createActivity();
        activity.setMark("A1");
        activity.getWalls().add(wall);
        project.setProgramme(ProgrammeFactory.eINSTANCE.createProgramme());
        project.getProgramme().getActivities().add(activity);
        pin.setJoint(Length.ofInches(1));
        ruledWall.getPins().add(pin);
        Proposal proposal = ProposalFactory.eINSTANCE.createProposal();
        proposal.setMark("P1");
        proposal.setWall(wall);
        proposal.setOpening(door);
        project.getProposals().add(proposal);
    }

    public static UnitType unit(String mark, long width) {
        UnitType made = CatalogueFactory.eINSTANCE.createUnitType();
        made.setMark(mark);
        made.setLength(Length.ofInches(14));
        made.setWidth(Length.ofInches(width));
        made.setHeight(Length.ofInches(4));
        made.getSpecialLengths().add(Length.ofInches(7));
        return made;
    }

    public Wall wall(String mark, long fromX, long fromY, long toX, long toY) {
        Wall made = BuildingFactory.eINSTANCE.createWall();
        made.setMark(mark);
        made.setFromX(Length.ofInches(fromX));
        made.setFromY(Length.ofInches(fromY));
        made.setToX(Length.ofInches(toX));
        made.setToY(Length.ofInches(toY));
        made.setHeight(Length.ofInches(96));
        made.setUnitType(unit);
        return made;
    }

    public static Opening opening(String mark, OpeningKind kind) {
        Opening made = BuildingFactory.eINSTANCE.createOpening();
        made.setMark(mark);
        made.setKind(kind);
        made.setOffset(Length.ofInches(40));
        made.setWidth(Length.ofInches(36));
        made.setHeight(Length.ofInches(84));
        return made;
    }

    public static JunctionEnd end(Wall wall, WallPlace place) {
        JunctionEnd made = BuildingFactory.eINSTANCE.createJunctionEnd();
        made.setWall(wall);
        made.setPlace(place);
        return made;
    }
}
