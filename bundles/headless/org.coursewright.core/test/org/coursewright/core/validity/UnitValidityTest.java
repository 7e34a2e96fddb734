package org.coursewright.core.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Consumer;
import java.util.stream.Stream;

import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class UnitValidityTest {

    private final Findings findings = new Findings();
    private final UnitValidity validity = new UnitValidity(LengthFormat.INCHES, findings);

    private static UnitType unit() {
        UnitType unit = CatalogueFactory.eINSTANCE.createUnitType();
        unit.setMark("B14");
        unit.setLength(Length.ofInches(14));
        unit.setWidth(Length.ofInches(10));
        unit.setHeight(Length.ofInches(4));
        return unit;
    }

    @Test
    void unitWithThreeSidesIsSound() {
        UnitType unit = unit();
        unit.getSpecialLengths().add(Length.ofInches(10));

        assertThat(validity.isSound(unit)).isTrue();
        assertThat(findings.gravestFirst()).isEmpty();
    }

    static Stream<Arguments> faults() {
        return Stream.of(fault("unit.no-height", unit -> unit.setHeight(null)),
                fault("unit.length", unit -> unit.setLength(Length.ofMillimetres(9))),
                fault("unit.width", unit -> unit.setWidth(Length.ofMillimetres(5001))),
                fault("unit.cut-step", unit -> unit.setCutStep(Length.ZERO)),
                fault("unit.shortest-piece", unit -> unit.setShortestPiece(Length.ofInches(15))),
                fault("unit.kerf", unit -> unit.setKerf(Length.ofInches(-1))),
                fault("unit.special-length", unit -> unit.getSpecialLengths().add(Length.ofInches(14))));
    }

    private static Arguments fault(String code, Consumer<UnitType> spoil) {
        return Arguments.of(code, spoil);
    }

    @ParameterizedTest
    @MethodSource("faults")
    void faultIsToldOnTheUnit(String code, Consumer<UnitType> spoil) {
        UnitType unit = unit();
        spoil.accept(unit);

        assertThat(validity.isSound(unit)).isFalse();
        assertThat(findings.gravestFirst()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(code);
            assertThat(finding.element().name()).isEqualTo("unit B14");
        });
    }

    @Test
    void findingsNameWhatToDo() {
        UnitType unit = unit();
        unit.setLength(Length.ofMillimetres(6000));

        validity.isSound(unit);

        assertThat(findings.gravestFirst()).extracting(Finding::message).singleElement().asString()
                .endsWith("Check the unit of measure.");
    }
}
