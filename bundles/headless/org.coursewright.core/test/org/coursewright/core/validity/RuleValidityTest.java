package org.coursewright.core.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;

import org.coursewright.bond.JointRule;
import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleValidityTest {

    private static final ElementReference WALL = new ElementReference("wall W1", Optional.empty());

    private final Findings findings = new Findings();
    private final RuleValidity validity = new RuleValidity(LengthFormat.INCHES, findings);

    private static Length in(String text) {
        return LengthFormat.INCHES.parse(text);
    }

    @ParameterizedTest
    @CsvSource({"3/4, 1/2, 3/8", "3/8, 1, 3/4", "-1/8, 1/2, 3/4", "3/8, 1/2, 5"})
    void jointsOutOfOrderOrOutOfReasonAreRefused(String least, String nominal, String most) {
        assertThat(validity.isRange(WALL, "bed joint", in(least), in(nominal), in(most))).isFalse();
        assertThat(findings.gravestFirst()).extracting(Finding::code).containsExactly("rule.bed-joint");
    }

    @Test
    void lapOfExactlyHalfAUnitIsAllowedAndMoreIsNot() {
        JointRule half = new JointRule(in("7"), in("3/8"), in("1/2"), in("3/4"));
        JointRule more = new JointRule(in("7 1/16"), in("3/8"), in("1/2"), in("3/4"));

        assertThat(validity.isSound(WALL, half, in("14"))).isTrue();
        assertThat(validity.isSound(WALL, more, in("14"))).isFalse();
        assertThat(findings.gravestFirst()).extracting(Finding::code).containsExactly("rule.lap");
    }
}
