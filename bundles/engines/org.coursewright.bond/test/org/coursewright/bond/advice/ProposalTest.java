package org.coursewright.bond.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;
import static org.coursewright.bond.advice.AdviceCases.advise;
import static org.coursewright.bond.advice.AdviceCases.length;
import static org.coursewright.bond.advice.AdviceCases.offset;
import static org.coursewright.bond.advice.AdviceCases.opening;
import static org.coursewright.bond.advice.AdviceCases.tenUnits;
import static org.coursewright.bond.advice.AdviceCases.width;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.junit.jupiter.api.Test;

/** Changes of dimensions that spare cuts, worked by hand. */
class ProposalTest {

    @Test
    void openingOffTheModuleIsProposedToMoveOntoIt() {
        Advice advice = advise(opening("44 1/4", "88 1/4"), List.of(offset("W1", "3")), Optional.empty());

        assertThat(advice.before().cutPieces()).isPositive();
        assertThat(advice.proposals()).singleElement().satisfies(proposal -> {
            assertThat(proposal.from()).isEqualTo(in("44 1/4"));
            assertThat(proposal.to()).isEqualTo(in("43"));
            assertThat(proposal.movement()).isEqualTo(in("1 1/4"));
            assertThat(proposal.cutsBefore()).isEqualTo(advice.before().cutPieces());
            assertThat(proposal.cutsAfter()).isZero();
        });
        assertThat(advice.after().cutPieces()).isZero();
        assertThat(advice.after().lapViolations()).isZero();
    }

    @Test
    void openingTooWideIsProposedNarrower() {
        Advice advice = advise(opening("43", "87 3/4"), List.of(width("W1", "2")), Optional.empty());

        assertThat(advice.proposals()).singleElement().satisfies(proposal -> {
            assertThat(proposal.from()).isEqualTo(in("44 3/4"));
            assertThat(proposal.to()).isEqualTo(in("44"));
        });
        assertThat(advice.after().cutPieces()).isZero();
    }

    @Test
    void bothMayBeNeeded() {
        Advice advice = advise(opening("43 1/2", "88"), List.of(offset("W1", "2"), width("W1", "2")),
                Optional.empty());

        assertThat(advice.after().cutPieces()).isZero();
        assertThat(advice.movement()).isEqualTo(in("1"));
    }

    @Test
    void freeEndIsProposedToMove() {
        WallFace odd = wall("146").stocked(stock("14", "6 3/4")).ruled(rule("3 1/2", "1/2", "1/2", "1/2")).courses(4)
                .build();
        Advice advice = advise(new BondRequest(List.of(odd), List.of()), List.of(length("W1", "2")), Optional.empty());

        assertThat(advice.proposals()).singleElement()
                .satisfies(proposal -> assertThat(proposal.to()).isEqualTo(in("144 1/2")));
        assertThat(advice.changed().walls().get(0).length()).isEqualTo(in("144 1/2"));
        assertThat(advice.after().cutPieces()).isZero();
    }

    @Test
    void lintelGoesWithItsOpening() {
        String mark = "N1";
        WallFace plain = tenUnits().build();
        WallFace face = new WallFace(plain.mark(), plain.length(), plain.stock(), plain.rule(), plain.courses(),
                plain.start(), plain.end(),
                List.of(new Obstacle(Obstacle.Kind.OPENING, mark, in("44 1/4"), in("88 1/4"), 1, 2, Optional.empty()),
                        new Obstacle(Obstacle.Kind.LINTEL, mark, in("30 1/4"), in("102 1/4"), 3, 3,
                                Optional.empty())));
        Advice advice = advise(new BondRequest(List.of(face), List.of()),
                List.of(Adjustable.within("W1", Optional.of(mark), Dimension.OFFSET, in("3"))), Optional.empty());

        List<Obstacle> changed = advice.changed().walls().get(0).obstacles();
        assertThat(advice.proposals()).isNotEmpty();
        assertThat(changed.get(0).from().minus(changed.get(1).from())).isEqualTo(in("14"));
        assertThat(changed.get(1).to().minus(changed.get(0).to())).isEqualTo(in("14"));
    }

    @Test
    void lengthOfAWallThatMeetsOthersAtBothEndsStays() {
        WallFace tied = tenUnits().start(new WallEnd.Tied()).end(new WallEnd.Tied()).build();
        Advice advice = advise(new BondRequest(List.of(tied), List.of()), List.of(length("W1", "2")),
                Optional.empty());

        assertThat(advice.profiles().get(0).points()).hasSize(1);
        assertThat(advice.proposals()).isEmpty();
    }

    @Test
    void changesBeyondTheBudgetAreNotProposed() {
        BondRequest building = opening("44 1/4", "88 1/4");

        Advice advice = advise(building, List.of(offset("W1", "3")), Optional.of(in("3/4")));

        assertThat(advice.movement()).isLessThanOrEqualTo(in("3/4"));
        assertThat(advice.after().cutPieces()).isPositive();
        assertThat(advise(building, List.of(offset("W1", "3")), Optional.of(in("1 1/4"))).after().cutPieces())
                .isZero();
    }

    @Test
    void budgetGoesToTheWallWhereItSparesMost() {
        WallFace low = tenUnits().mark("A").obstacle(Obstacle.Kind.OPENING, in("44"), in("88"), 1, 1).build();
        WallFace high = tenUnits().mark("B").courses(8).obstacle(Obstacle.Kind.OPENING, in("44"), in("88"), 1, 6)
                .build();
        BondRequest building = new BondRequest(List.of(low, high), List.of());

        Advice advice = advise(building, List.of(offset("A", "3"), offset("B", "3")), Optional.of(in("1")));

        assertThat(advice.proposals()).singleElement()
                .satisfies(proposal -> assertThat(proposal.adjustable().wall()).isEqualTo("B"));
    }
}
