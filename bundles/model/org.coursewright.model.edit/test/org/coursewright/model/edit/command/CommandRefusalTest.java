package org.coursewright.model.edit.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.Junction;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallPlace;
import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.edit.Refusal;
import org.coursewright.model.edit.SampleBuilding;
import org.coursewright.model.project.ProjectFactory;
import org.coursewright.model.project.ProjectPackage;
import org.coursewright.model.project.Site;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandRefusalTest {

    private static final Length NONE = Length.ZERO;
    private static final Length INCH = Length.ofInches(1);

    private final SampleBuilding sample = new SampleBuilding();

    private static String reason(ProjectCommand command) {
        assertThat(command.canExecute()).isFalse();
        return command.refusal().map(Refusal::reason).orElseThrow();
    }

    @Test
    void takenMarkIsRefusedWithAFreeOne() {
        assertThat(reason(new RenameCommand(sample.wall, "W2")))
                .isEqualTo("The mark W2 is taken by another Wall. Choose another, such as W5.");
    }

    @Test
    void markOfAnotherKindIsFree() {
        assertThat(new RenameCommand(sample.wall, "D1").canExecute()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "\t"})
    void blankMarkIsRefused(String mark) {
        assertThat(reason(new RenameCommand(sample.wall, mark))).contains("cannot be empty");
    }

    @Test
    void markWithLineBreakOrTooLongIsRefused() {
        assertThat(reason(new RenameCommand(sample.wall, "W\n1"))).contains("at most 40 characters");
        assertThat(reason(new RenameCommand(sample.wall, "W".repeat(41)))).contains("at most 40 characters");
        assertThat(new RenameCommand(sample.wall, "W".repeat(40)).canExecute()).isTrue();
    }

    @Test
    void unchangedValueIsNotExecutableAndNotRefused() {
        ProjectCommand same = new ChangeWallHeightCommand(sample.wall, sample.wall.getHeight());
        assertThat(same.canExecute()).isFalse();
        assertThat(same.refusal()).isEmpty();
    }

    @Test
    void lengthsThatCannotBeAreRefusedInTheUnitsOfTheProject() {
        assertThat(reason(new ChangeWallHeightCommand(sample.wall, NONE)))
                .isEqualTo("The Height of Wall W1 cannot be 0\". Give a length greater than 0.");
        sample.project.setDisplayUnit(DisplayUnit.MILLIMETRE);
        assertThat(reason(new ChangeWallHeightCommand(sample.wall, NONE))).contains("cannot be 0 mm");
        assertThat(reason(new MoveOpeningCommand(sample.door, INCH.negated()))).contains("Give a length of 0 or more");
        assertThat(reason(new ResizeOpeningCommand(sample.door, NONE, INCH))).contains("The Width of Door D1");
        assertThat(reason(new ResizeOpeningCommand(sample.door, INCH, NONE))).contains("The Height of Door D1");
        assertThat(reason(new ChangeSillCommand(sample.door, INCH.negated()))).contains("Sill height");
        assertThat(reason(new SetTolerancesCommand(sample.door, INCH, INCH.negated()))).contains("0 or more");
        assertThat(reason(new SetTolerancesCommand(sample.wall, INCH.negated(), INCH))).contains("0 or more");
        assertThat(reason(new ChangeWallBaseCommand(sample.wall, null))).contains("must be given");
    }

    @Test
    void wallWithoutLengthIsRefused() {
        assertThat(reason(new MoveWallEndCommand(sample.wall, WallPlace.END, NONE, NONE)))
                .isEqualTo("Wall W1 would have no length. Move one of its ends away from the other.");
        assertThat(reason(new ChangeCentreLineCommand(sample.wall, INCH, INCH, INCH, INCH))).contains("no length");
        assertThat(reason(new SetFeatureCommand(sample.wall, BuildingPackage.Literals.WALL__TO_X, NONE)))
                .contains("no length");
        assertThat(reason(new AddWallCommand(sample.storey, sample.wall("W7", 3, 3, 3, 3)))).contains("no length");
    }

    @Test
    void onlyTheEndsOfAWallCanBeMoved() {
        assertThatThrownBy(() -> new MoveWallEndCommand(sample.wall, WallPlace.ALONG, INCH, INCH))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void elementOfAnotherProjectIsRefused() {
        SampleBuilding other = new SampleBuilding();
        assertThat(reason(new ChangeUnitTypeCommand(sample.wall, other.unit))).contains("another one");
        Wall foreign = sample.wall("W7", 0, 0, 9, 0);
        foreign.setUnitType(other.unit);
        assertThat(reason(new AddWallCommand(sample.storey, foreign))).contains("another one");
    }

    @Test
    void elementThatIsInAProjectCannotBeAdded() {
        assertThat(reason(new AddWallCommand(sample.storey, sample.wall))).contains("in a project already");
    }

    @Test
    void addedElementIsCheckedWithAllItHolds() {
        Wall wall = sample.wall("W7", 0, 0, 9, 0);
        Opening opening = SampleBuilding.opening("D1", OpeningKind.DOOR);
        wall.getOpenings().add(opening);
        assertThat(reason(new AddWallCommand(sample.storey, wall))).contains("The mark D1 is taken");
        opening.setMark("D7");
        opening.setWidth(NONE);
        assertThat(reason(new AddWallCommand(sample.storey, wall))).contains("The Width of Door D7");
        opening.setWidth(INCH);
        assertThat(new AddWallCommand(sample.storey, wall).canExecute()).isTrue();
        assertThat(reason(new AddUnitTypeCommand(sample.project, SampleBuilding.unit("B7", 0)))).contains("The Width");
    }

    @Test
    void elementThatWasRemovedIsRefused() {
        ProjectCommand rename = new RenameCommand(sample.door, "D5");
        new RemoveWallCommand(sample.wall).execute();
        assertThat(reason(rename)).contains("no longer in the project");
    }

    @ParameterizedTest
    @CsvSource({"3/4, 1/2, 3/8", "3/8, 3/4, 1/2", "1/2, , 3/8"})
    void fallingJointsAreRefused(String least, String nominal, String most) {
        BondRule rule = BuildingFactory.eINSTANCE.createBondRule();
        rule.setHeadLeast(inches(least));
        rule.setHeadNominal(inches(nominal));
        rule.setHeadMost(inches(most));
        assertThat(reason(new SetBondRuleCommand(sample.project, rule))).contains("head joints must not fall");
    }

    private static Length inches(String fraction) {
        if (fraction == null) {
            return null;
        }
        String[] parts = fraction.split("/");
        return Length.ofInchFraction(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
    }

    @Test
    void wallThatDoesNotMeetThereCannotRunThrough() {
        assertThat(reason(new ChooseHandingCommand(sample.project.getBuilding(), sample.corner,
                Optional.of(sample.ruledWall)))).isEqualTo(
                        "Wall W4 does not meet at Junction W1, W2. Choose one of the walls that do.");
        Junction lonely = BuildingFactory.eINSTANCE.createJunction();
        assertThat(reason(new ChooseHandingCommand(sample.project.getBuilding(), lonely, Optional.empty())))
                .contains("at least two walls");
    }

    @Test
    void placesThatAreNotOnEarthAreRefused() {
        Site site = ProjectFactory.eINSTANCE.createSite();
        site.setLatitude(new BigDecimal("90.01"));
        assertThat(reason(new DescribeSiteCommand(sample.project, site))).contains("from -90 to 90");
        site.setLatitude(new BigDecimal("-90"));
        site.setTimeZone("Mars/Olympus");
        assertThat(reason(new DescribeSiteCommand(sample.project, site))).contains("IANA time zone");
    }

    @Test
    void simpleValuesAreChecked() {
        assertThat(reason(set(sample.project, ProjectPackage.Literals.PROJECT__CURRENCY, "Dollar")))
                .contains("ISO 4217");
        assertThat(reason(set(sample.project, ProjectPackage.Literals.PROJECT__LOCALE, "no locale")))
                .contains("BCP 47");
        assertThat(reason(set(sample.wall, ProjectPackage.Literals.MARKED__NOTE, "bell \u0007"))).contains("control");
        assertThat(reason(set(sample.wall, ProjectPackage.Literals.MARKED__NOTE, "half \uD83E"))).contains("control");
        assertThat(reason(set(sample.wall, ProjectPackage.Literals.MARKED__MARK, "W2"))).contains("taken");
        assertThat(reason(set(sample.wall, BuildingPackage.Literals.WALL__BOND, "stretcher"))).contains("type");
        assertThat(reason(set(sample.wall, BuildingPackage.Literals.WALL__BOND, null))).contains("type");
        assertThat(reason(set(sample.unit, CataloguePackage.Literals.UNIT_TYPE__SPECIAL_LENGTHS, List.of(INCH, INCH))))
                .contains("each once");
        assertThat(reason(set(sample.unit, CataloguePackage.Literals.UNIT_TYPE__DAYS_DRYING, -1))).contains("from 0");
        assertThat(reason(new SetDisplayUnitCommand(sample.project, DisplayUnit.INCH, 7))).contains("8 or 16");
        assertThat(reason(new NameProjectCommand(sample.project, " "))).contains("cannot be empty");
    }

    private static ProjectCommand set(EObject owner, EStructuralFeature feature, Object value) {
        return new SetFeatureCommand(owner, feature, value);
    }

    @Test
    void featureThatHoldsElementsCannotBeSet() {
        assertThatThrownBy(() -> set(sample.wall, BuildingPackage.Literals.WALL__OPENINGS, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> set(sample.door, BuildingPackage.Literals.WALL__HEIGHT, INCH))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void removedWallTakesAlongWhatMakesNoSenseWithoutIt() {
        new RemoveWallCommand(sample.wall).execute();
        assertThat(sample.project.getBuilding().getJunctions()).isEmpty();
        assertThat(sample.project.getProposals()).isEmpty();
        assertThat(sample.project.getBuilding().getBondBeams().get(0).getWalls()).hasSize(3);
        assertThat(sample.project.getProgramme().getActivities().get(0).getWalls()).isEmpty();
        assertThat(EcoreUtil.ExternalCrossReferencer.find(sample.project)).isEmpty();
    }

    @Test
    void removedStoreyLeavesNoDanglingReference() {
        new RemoveStoreyCommand(sample.storey).execute();
        assertThat(EcoreUtil.ExternalCrossReferencer.find(sample.project)).isEmpty();
        assertThat(sample.project.getBuilding().getBondBeams().get(0).getWalls()).isEmpty();
    }

    @Test
    void commandIsExecutedOnce() {
        ProjectCommand rename = new RenameCommand(sample.wall, "W9");
        rename.execute();
        assertThatThrownBy(rename::execute).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void failingCommandLeavesTheProjectAsItWas() {
        EObject before = EcoreUtil.copy(sample.project);
        ProjectCommand failing = new RenamingAndFailing(sample.wall);
        assertThatThrownBy(failing::execute).isInstanceOf(IllegalStateException.class);
        assertThat(EcoreUtil.equals(sample.project, before)).isTrue();
        assertThat(failing.canUndo()).isFalse();
    }

    private static final class RenamingAndFailing extends ProjectCommand {
        private final Wall wall;

        RenamingAndFailing(Wall wall) {
            super(wall);
            this.wall = wall;
        }

        @Override
        public String getLabel() {
            return "Fail";
        }

        @Override
        protected Optional<Refusal> findRefusal() {
            return Optional.empty();
        }

        @Override
        protected boolean changesAnything() {
            return true;
        }

        @Override
        protected void apply() {
            wall.setMark("half");
            throw new IllegalStateException("on purpose");
        }

        @Override
        protected List<Wall> affected() {
            return List.of(wall);
        }
    }

    @Test
    void openingsThatWouldLieBeforeTheStartFaceKeepAllWallsWhereTheyAre() {
        WallPosition beyond = new WallPosition(sample.wall, Length.ofInches(100), NONE, sample.wall.getToX(), NONE,
                Length.ofInches(-100));
        MoveWallsCommand command = new MoveWallsCommand(List.of(beyond), 1);

        assertThat(reason(command)).contains("Door D1").contains("cannot be");
    }

    @Test
    void labelNamesTheWallsThatWereChosen() {
        WallPosition one = new WallPosition(sample.wall, INCH, NONE, sample.wall.getToX(), NONE, NONE);
        WallPosition other = new WallPosition(sample.ruledWall, INCH, NONE, INCH, INCH, NONE);

        assertThat(new StretchWallsCommand(List.of(one, other), 1).getLabel()).isEqualTo("Stretch Wall W1");
        assertThat(new MoveWallsCommand(List.of(one, other), 2).getLabel()).isEqualTo("Move Wall W1 and Wall W4");
    }
}
