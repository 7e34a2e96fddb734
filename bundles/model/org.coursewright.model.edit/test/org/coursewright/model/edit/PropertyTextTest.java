package org.coursewright.model.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.stream.Stream;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.programme.ProgrammePackage;
import org.coursewright.model.project.ProjectPackage;
import org.coursewright.model.proposal.ProposalPackage;
import org.coursewright.model.supply.SupplyPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class PropertyTextTest {

    private final SampleBuilding sample = new SampleBuilding();
    private final PropertyText text = new PropertyText(LengthFormat.INCHES);

    static Stream<Arguments> values() {
        return Stream.of(arguments(BuildingPackage.Literals.WALL__HEIGHT, "8'-0 1/2\"", Length.ofInchFraction(193, 2)),
                arguments(BuildingPackage.Literals.WALL__BOND, "Header", Bond.HEADER),
                arguments(ProjectPackage.Literals.PROJECT__DISPLAY_UNIT, "Millimetres", DisplayUnit.MILLIMETRE),
                arguments(ProjectPackage.Literals.PROJECT__INCH_DENOMINATOR, "8", 8),
                arguments(ProjectPackage.Literals.MARKED__NOTE, "two\nlines", "two\nlines"),
                arguments(CataloguePackage.Literals.UNIT_TYPE__MASS, "15.25", new BigDecimal("15.25")),
                arguments(CataloguePackage.Literals.UNIT_TYPE__SPECIAL_LENGTHS, "5\"; 7\"",
                        List.of(Length.ofInches(5), Length.ofInches(7))),
                arguments(ProgrammePackage.Literals.PROGRESS__FINISHED, "Yes", true),
                arguments(ProgrammePackage.Literals.PROGRESS__FINISHED, "No", false),
                arguments(ProgrammePackage.Literals.PROGRESS__DATE, "2026-03-31", LocalDate.of(2026, 3, 31)),
                arguments(ProgrammePackage.Literals.WORK_CALENDAR__DAYS_OFF, "2026-03-31; 2026-04-01",
                        List.of(LocalDate.of(2026, 3, 31), LocalDate.of(2026, 4, 1))),
                arguments(ProgrammePackage.Literals.WORK_CALENDAR__START, "07:30", LocalTime.of(7, 30)),
                arguments(ProposalPackage.Literals.PROPOSAL__AT, "2026-03-31T07:30:00Z",
                        Instant.parse("2026-03-31T07:30:00Z")),
                arguments(SupplyPackage.Literals.PRICE_BREAK__PRICE, "1.25 USD", Money.fromStored("1.25 USD")),
                arguments(SupplyPackage.Literals.PRICE_BREAK__FROM, "3.5 MTQ", Quantity.fromStored("3.5 MTQ")));
    }

    @ParameterizedTest
    @MethodSource("values")
    void valueIsReadAndWrittenAlike(EStructuralFeature feature, String typed, Object value) {
        PropertyDescriptor property = PropertyDescriptors.of(feature);
        assertThat(text.parse(property, sample.project, " " + typed + " ")).isEqualTo(value);
        assertThat(text.edited(value)).isEqualTo(typed);
    }

    static Stream<Arguments> unreadable() {
        return Stream.of(arguments(BuildingPackage.Literals.WALL__HEIGHT, "tall", "not a length"),
                arguments(BuildingPackage.Literals.WALL__BOND, "English", "choose one of Stretcher, Header"),
                arguments(ProjectPackage.Literals.PROJECT__INCH_DENOMINATOR, "8.5", "whole number"),
                arguments(CataloguePackage.Literals.UNIT_TYPE__MASS, "heavy", "give a number"),
                arguments(CataloguePackage.Literals.UNIT_TYPE__SPECIAL_LENGTHS, "5; x", "not a length"),
                arguments(ProgrammePackage.Literals.PROGRESS__FINISHED, "perhaps", "give Yes or No"),
                arguments(ProgrammePackage.Literals.PROGRESS__DATE, "31.3.2026", "give a date, such as"),
                arguments(ProgrammePackage.Literals.WORK_CALENDAR__START, "half past", "give a time"),
                arguments(ProposalPackage.Literals.PROPOSAL__AT, "noon", "give a moment"),
                arguments(SupplyPackage.Literals.PRICE_BREAK__PRICE, "1.25", "1.25 USD"),
                arguments(BuildingPackage.Literals.WALL__UNIT_TYPE, "Unit type B99", "project's elements"),
                arguments(BuildingPackage.Literals.BOND_BEAM__WALLS, "W1", "cannot be typed"));
    }

    @ParameterizedTest
    @MethodSource("unreadable")
    void whatCannotBeReadIsSaidWithWhatCan(EStructuralFeature feature, String typed, String words) {
        PropertyDescriptor property = PropertyDescriptors.of(feature);
        assertThatThrownBy(() -> text.parse(property, sample.project, typed))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining(words);
    }

    @Test
    void blankIsNoValue() {
        assertThat(text.parse(PropertyDescriptors.of(CataloguePackage.Literals.UNIT_TYPE__KERF), sample.unit, " "))
                .isNull();
        assertThat(text.parse(PropertyDescriptors.of(CataloguePackage.Literals.UNIT_TYPE__SPECIAL_LENGTHS), sample.unit,
                "")).isEqualTo(List.of());
        assertThat(text.shown(null)).isEmpty();
    }

    @Test
    void elementIsChosenByItsLabelAmongThoseOfTheProject() {
        PropertyDescriptor property = PropertyDescriptors.of(BuildingPackage.Literals.WALL__UNIT_TYPE);
        assertThat(PropertyText.candidates(property, sample.wall)).isEqualTo(List.of(sample.unit, sample.otherUnit));
        assertThat(text.shown(sample.otherUnit)).isEqualTo("Unit type B10");
        assertThat(text.parse(property, sample.wall, "Unit type B10")).isSameAs(sample.otherUnit);
    }

    @Test
    void shownLengthIsRoundedAndEditedLengthIsExact() {
        Length odd = Length.ofInchFraction(127, 64);
        assertThat(text.shown(odd)).isEqualTo("2\"");
        assertThat(text.edited(odd)).isEqualTo("1 63/64\"");
        Length neither = Length.ofUnits(1);
        assertThat(text.parse(PropertyDescriptors.of(BuildingPackage.Literals.WALL__BASE), sample.wall,
                text.edited(neither))).isEqualTo(neither);
    }

    @Test
    void hugeNumberIsShownShort() {
        assertThat(text.shown(new BigDecimal("1E999999999"))).isEqualTo("1E+999999999");
        assertThat(text.shown(new BigDecimal("1E3"))).isEqualTo("1000");
    }
}
