package org.coursewright.model.edit.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.GaugePin;
import org.coursewright.model.building.Junction;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.TeeTie;
import org.coursewright.model.building.TopPoint;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallPlace;
import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.edit.SampleBuilding;
import org.coursewright.model.project.ProjectFactory;
import org.coursewright.model.project.Site;
import org.coursewright.model.proposal.Dimension;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalFactory;
import org.coursewright.model.proposal.ProposalState;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CommandRoundTripTest {

    private static final Length NONE = Length.ZERO;
    private static final Length INCH = Length.ofInches(1);

    static Stream<Function<SampleBuilding, ProjectCommand>> commands() {
        return Stream.of(s -> new RenameCommand(s.wall, "W9"), s -> new NameProjectCommand(s.project, "Clinic"),
                s -> new DescribeSiteCommand(s.project, site()),
                s -> new SetDisplayUnitCommand(s.project, DisplayUnit.MILLIMETRE, 8),
                s -> new AddStoreyCommand(s.project, storey()), s -> new RemoveStoreyCommand(s.storey),
                s -> new AddWallCommand(s.storey, s.wall("W5", 0, 75, 200, 75)), s -> new RemoveWallCommand(s.wall),
                s -> new MoveWallEndCommand(s.wall, WallPlace.END, Length.ofInches(220), INCH),
                s -> new MoveWallEndCommand(s.wall, WallPlace.START, INCH, INCH),
                s -> new ChangeCentreLineCommand(s.wall, INCH, INCH, Length.ofInches(99), INCH),
                s -> new MoveWallsCommand(List.of(shifted(s.wall, NONE), shifted(s.ruledWall, NONE)), 2),
                s -> new StretchWallsCommand(List.of(shifted(s.wall, INCH.negated())), 1),
                s -> new FitTopCommand(s.storey.getWalls().get(1), INCH),
                s -> new AlignWallsCommand(List.of(shifted(s.wall, NONE)), 1),
                s -> new MirrorWallsCommand(List.of(shifted(s.wall, INCH)), 1),
                s -> new AddWallsCommand(s.storey, List.of(s.wall("W5", 0, 75, 200, 75), s.wall("W6", 9, 0, 9, 75))),
                s -> new ChangeWallHeightCommand(s.wall, Length.ofInches(100)),
                s -> new ChangeWallBaseCommand(s.wall, INCH.negated()),
                s -> new ChangeUnitTypeCommand(s.wall, s.otherUnit), s -> new ChangeBondCommand(s.wall, Bond.HEADER),
                s -> new AddOpeningCommand(s.wall, SampleBuilding.opening("D2", OpeningKind.WINDOW)),
                s -> new RemoveOpeningCommand(s.door), s -> new MoveOpeningCommand(s.door, Length.ZERO),
                s -> new ResizeOpeningCommand(s.door, INCH, INCH), s -> new ChangeSillCommand(s.door, INCH),
                s -> new SetJambsCommand(s.door, INCH, Length.ofInches(44)),
                s -> new AlignOpeningsCommand(Map.of(s.door, INCH)),
                s -> new SetTolerancesCommand(s.door, INCH, INCH),
                s -> new SetTolerancesCommand(s.wall, INCH, INCH),
                s -> new AddUnitTypeCommand(s.project, SampleBuilding.unit("B8", 8)),
                s -> new EditUnitTypeCommand(s.unit, CataloguePackage.Literals.UNIT_TYPE__MASS,
                        new BigDecimal("15.2")),
                s -> new EditUnitTypeCommand(s.unit, CataloguePackage.Literals.UNIT_TYPE__SPECIAL_LENGTHS,
                        List.of(INCH, Length.ofInches(7))),
                s -> new SetBondRuleCommand(s.project, rule()), s -> new SetBondRuleCommand(s.wall, rule()),
                s -> new ClearBondRuleCommand(s.ruledWall),
                s -> new ChooseHandingCommand(s.project.getBuilding(), s.corner, Optional.empty()),
                s -> new ChooseHandingCommand(s.project.getBuilding(), newJunction(s),
                        Optional.of(s.storey.getWalls().get(2))),
                s -> new PinCommand(s.wall, pin(INCH), List.of()),
                s -> new PinCommand(s.ruledWall, pin(INCH.times(2)), List.of(s.pin)),
                s -> new UnpinCommand(s.ruledWall, List.of(s.pin)),
                s -> new OfferProposalsCommand(s.project, List.of(proposal(s))),
                s -> new AnswerProposalsCommand(s.project.getProposals(), ProposalState.REFUSED),
                s -> new AddRateCommand(s.project, SampleBuilding.rate("sand")),
                s -> new RemoveRateCommand(s.rate),
                s -> new ReplaceRatesCommand(s.project, List.of(SampleBuilding.rate("lime"))),
                s -> new AddScenarioCommand(s.project, SampleBuilding.scenario("bought")),
                s -> new RemoveScenarioCommand(s.scenario),
                s -> new SetFeatureCommand(s.corner, BuildingPackage.Literals.JUNCTION__TIE, TeeTie.TIED));
    }

    private static GaugePin pin(Length joint) {
        GaugePin pin = BuildingFactory.eINSTANCE.createGaugePin();
        pin.setCourse(2);
        pin.setAt(INCH);
        pin.setJoint(joint);
        return pin;
    }

    private static Proposal proposal(SampleBuilding sample) {
        Proposal proposal = ProposalFactory.eINSTANCE.createProposal();
        proposal.setMark("P9");
        proposal.setWall(sample.wall);
        proposal.setDimension(Dimension.LENGTH);
        return proposal;
    }

    private static Proposal offered(SampleBuilding sample) {
        Proposal proposal = proposal(sample);
        sample.project.getProposals().add(proposal);
        return proposal;
    }

    @Test
    void whatWasNotAnsweredIsWithdrawnByTheNextOffer() {
        SampleBuilding sample = new SampleBuilding();
        Proposal before = offered(sample);

        new OfferProposalsCommand(sample.project, List.of(proposal(sample))).execute();

        assertThat(before.getState()).isEqualTo(ProposalState.WITHDRAWN);
        assertThat(sample.project.getProposals()).last().extracting(Proposal::getState).isEqualTo(ProposalState.OPEN);
    }

    @Test
    void topOfAGableIsSpreadOverALongerWall() {
        SampleBuilding sample = new SampleBuilding();
        Wall wall = sample.storey.getWalls().get(1);

        new StretchWallsCommand(
                List.of(new WallPosition(wall, wall.getFromX(), NONE, wall.getToX(), Length.ofInches(180), NONE)), 1)
                .execute();

        assertThat(wall.getTopProfile()).extracting(TopPoint::getOffset).containsExactly(NONE, Length.ofInches(95),
                Length.ofInches(190));
        assertThat(wall.getTopProfile()).extracting(TopPoint::getHeight).containsExactly(Length.ofInches(96),
                Length.ofInches(136), Length.ofInches(96));
    }

    private static WallPosition shifted(Wall wall, Length openings) {
        return new WallPosition(wall, wall.getFromX().plus(INCH), wall.getFromY(), wall.getToX(), wall.getToY(),
                openings);
    }

    private static Site site() {
        Site site = ProjectFactory.eINSTANCE.createSite();
        site.setLatitude(new BigDecimal("35.1"));
        site.setTimeZone("Etc/UTC");
        return site;
    }

    private static Storey storey() {
        Storey storey = BuildingFactory.eINSTANCE.createStorey();
        storey.setMark("1");
        return storey;
    }

    private static BondRule rule() {
        BondRule rule = BuildingFactory.eINSTANCE.createBondRule();
        rule.setHeadLeast(Length.ofInchFraction(3, 8));
        rule.setHeadMost(Length.ofInchFraction(3, 4));
        return rule;
    }

    private static Junction newJunction(SampleBuilding s) {
        Junction junction = BuildingFactory.eINSTANCE.createJunction();
        junction.getEnds().add(SampleBuilding.end(s.storey.getWalls().get(1), WallPlace.END));
        junction.getEnds().add(SampleBuilding.end(s.storey.getWalls().get(2), WallPlace.START));
        return junction;
    }

    static Stream<Named<Function<SampleBuilding, ProjectCommand>>> namedCommands() {
        return commands().map(each -> Named.of(each.apply(new SampleBuilding()).getClass().getSimpleName(), each));
    }

    @ParameterizedTest
    @MethodSource("namedCommands")
    void commandIsUndoneAndRedoneExactly(Function<SampleBuilding, ProjectCommand> commands) {
        SampleBuilding sample = new SampleBuilding();
        CommandRoundTrip.verify(sample.project, () -> commands.apply(sample));
    }

    @Test
    void everyCommandTakesTheRoundTrip() throws IOException, URISyntaxException, ReflectiveOperationException {
        Set<Class<?>> tried = new HashSet<>();
        commands().forEach(each -> tried.add(each.apply(new SampleBuilding()).getClass()));
        Path classes = Path.of(ProjectCommand.class.getResource("ProjectCommand.class").toURI()).getParent();
        Set<Class<?>> all = new HashSet<>();
        try (Stream<Path> files = Files.list(classes)) {
            for (Path file : files.filter(each -> each.toString().endsWith("Command.class")).toList()) {
                Class<?> type = Class.forName(ProjectCommand.class.getPackageName() + "."
                        + file.getFileName().toString().replace(".class", ""));
                if (!Modifier.isAbstract(type.getModifiers())) {
                    all.add(type);
                }
            }
        }
        assertThat(all).hasSizeGreaterThan(20);
        assertThat(tried).isEqualTo(all);
    }
}
