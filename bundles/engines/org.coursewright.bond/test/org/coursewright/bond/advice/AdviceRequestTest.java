package org.coursewright.bond.advice;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.advice.AdviceCases.advise;
import static org.coursewright.bond.advice.AdviceCases.offset;
import static org.coursewright.bond.advice.AdviceCases.opening;
import static org.coursewright.bond.advice.AdviceCases.soon;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.InvalidBondRequestException;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** Requests for advice that cannot be met, or are no longer wanted. */
class AdviceRequestTest {

    @Test
    void unknownWallIsReported() {
        BondRequest building = opening("43", "87");
        assertThatThrownBy(() -> advise(building, List.of(offset("W9", "1")), Optional.empty()))
                .isInstanceOf(InvalidBondRequestException.class).hasMessageContaining("W9");
    }

    @Test
    void unknownOpeningIsReported() {
        Adjustable door = Adjustable.within("W1", Optional.of("D9"), Dimension.OFFSET, in("1"));
        BondRequest building = opening("43", "87");
        assertThatThrownBy(() -> advise(building, List.of(door), Optional.empty()))
                .isInstanceOf(InvalidBondRequestException.class).hasMessageContaining("D9");
    }

    @Test
    void unknownWallCannotBeLookedAt() {
        BondRequest building = opening("43", "87");
        assertThatThrownBy(() -> soon(building, offset("W9", "1"))).isInstanceOf(InvalidBondRequestException.class)
                .hasMessageContaining("W9");
    }

    @Test
    void adviceCanBeCancelled() {
        AdviceRequest request = new AdviceRequest(opening("44", "88"), List.of(offset("W1", "3")), List.of(), in("1/4"),
                Optional.empty());
        assertThatThrownBy(() -> BondAdvisor.standard().advise(request, Progress.until(() -> true)))
                .isInstanceOf(CancellationException.class);
    }
}
