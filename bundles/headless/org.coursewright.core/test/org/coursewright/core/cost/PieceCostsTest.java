package org.coursewright.core.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;

import org.coursewright.core.PlanBuilder;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.CrewType;
import org.coursewright.model.estimate.RateKind;
import org.coursewright.model.estimate.WorkKind;
import org.junit.jupiter.api.Test;

class PieceCostsTest {

    private static final BigDecimal NEAR = new BigDecimal("1e-6");

    private final PricedRoom room = new PricedRoom();

    PieceCostsTest() {
        CrewType hand = CatalogueFactory.eINSTANCE.createCrewType();
        hand.setMark("saw hand");
        hand.getMembers().add(PricedRoom.member("tender", 1));
        room.project().getCatalogue().getCrewTypes().add(hand);
        room.task(WorkKind.CUT, "30 H87", hand);
    }

    /**
     * By hand: a unit 1.50, laying (30 + 2 × 20) ÷ 20 = 3.50 in 3 × 60 ÷ 20 = 9 minutes of people, a cut 20 ÷ 30 = 0.666667
     * in 2 minutes. A piece of 6 3/4 in takes (6 3/4 + 3/16) ÷ (14 + 3/16) = 111 ÷ 227 of a unit, so it costs 0.733480 +
     * 0.666667 = 1.400147.
     */
    @Test
    void cutPieceCostsItsPartOfAUnitAndTheCut() {
        PieceCosts costs = PieceCostBook.of(room.project()).byType().get("B14");
        assertThat(costs.unit().amount()).isCloseTo(new BigDecimal("1.5"), within(NEAR));
        assertThat(costs.laying().amount()).isCloseTo(new BigDecimal("3.5"), within(NEAR));
        assertThat(costs.layingMinutes()).isCloseTo(new BigDecimal("9"), within(NEAR));
        CutPieceCost piece = costs.ofPiece(PlanBuilder.in("6 3/4"), PlanBuilder.in("14"), PlanBuilder.in("3/16"));
        assertThat(piece.units()).isCloseTo(new BigDecimal("0.488987"), within(NEAR));
        assertThat(piece.cost().amount()).isCloseTo(new BigDecimal("1.400147"), within(NEAR));
        assertThat(piece.minutes()).isCloseTo(new BigDecimal("2"), within(NEAR));
    }

    @Test
    void pieceLongerThanTheUnitIsRefused() {
        PieceCosts costs = PieceCostBook.of(room.project()).byType().get("B14");
        assertThatThrownBy(() -> costs.ofPiece(PlanBuilder.in("15"), PlanBuilder.in("14"), Length.ZERO)).isInstanceOf(
                IllegalArgumentException.class).hasMessageContaining("381 mm");
    }

    @Test
    void unitWithoutARateHasNoCosts() {
        room.estimate().getRates().remove(room.rate("B14"));
        assertThat(PieceCostBook.of(room.project()).byType()).isEmpty();
    }

    /** Two walls of the room are 6 in off the module, so that pieces are cut: dear specials do not pay, free set-up may. */
    @Test
    void specialPaysFromItsBreakEven() {
        room.wall(0).setToX(PlanBuilder.in("226"));
        room.wall(1).setFromX(PlanBuilder.in("226"));
        room.wall(1).setToX(PlanBuilder.in("226"));
        room.wall(2).setFromX(PlanBuilder.in("226"));
        room.rate(MakeOrCutReport.SET_UP, RateKind.PLANT, "1000 USD", "EA");
        MakeOrCutReport dear = DerivationGraph.once(room.project(), PriceResults.MAKE_OR_CUT);
        assertThat(dear.lines()).isNotEmpty().allSatisfy(line -> {
            assertThat(line.stocked()).isFalse();
            assertThat(line.makingPays()).isFalse();
            assertThat(line.making().minus(line.cutting()).amount()).isPositive();
        });
        room.rate(MakeOrCutReport.SET_UP).setPrice(Money.fromStored("0 USD"));
        MakeOrCutReport free = DerivationGraph.once(room.project(), PriceResults.MAKE_OR_CUT);
        assertThat(free.lines()).allSatisfy(line -> assertThat(line.makingPays()).isEqualTo(line.cutting().minus(line
                .making()).amount().signum() > 0));
    }
}
